package counterset.report;

import counterset.explain.ChangeWords;
import counterset.explain.Difference;
import counterset.explain.DifferenceWords;
import counterset.explain.ScoreWords;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * A plan made better, beside the one it was made from.
 *
 * @param changed the places that count as changes, in order; empty if nothing better was found
 */
public record BetterPlan(Plan from, Plan to, List<At> changed, Catalogue catalogue) {

  public BetterPlan {
    changed = List.copyOf(changed);
  }

  /** Whether it is another session. */
  public boolean isBetter() {
    return !to.session().supersets().equals(from.session().supersets());
  }

  /** What stands at the changed places now, one line each. */
  public List<String> changes() {
    List<String> changes = new ArrayList<>(ChangeWords.of(from, to, changed));
    int fewer = from.session().supersets().size() - to.session().supersets().size();
    if (fewer > 0) {
      changes.add(
          "Left off at the end: "
              + fewer
              + (fewer == 1 ? " superset" : " supersets")
              + " for which the clock has no room");
    }
    return changes;
  }

  /** What that does, rules first. */
  public List<Difference> differences() {
    return DifferenceWords.differences(from, to, catalogue);
  }

  /** What it is worth in all: {@code +31 points}, rules and wishes named where they differ. */
  public String worth() {
    List<String> parts = new ArrayList<>();
    add(parts, to.score().hard() - from.score().hard(), "at the rules");
    add(parts, to.score().medium() - from.score().medium(), "at the wishes");
    int soft = to.score().soft() - from.score().soft();
    parts.add(ScoreWords.points(soft) + (Math.abs(soft) == 1 ? " point" : " points"));
    return String.join(", ", parts);
  }

  private static void add(List<String> parts, int points, String where) {
    if (points != 0) {
      parts.add(ScoreWords.points(points) + " " + where);
    }
  }
}

package counterset.review;

import counterset.explain.Unmet;
import counterset.model.Catalogue;
import counterset.model.Intervals;
import counterset.model.Plan;
import counterset.search.Obstacles;
import counterset.search.WayOut;
import counterset.timeline.SessionLength;
import java.util.ArrayList;
import java.util.List;

/** Why a plan is not all that was asked for, and what would free it; one line each. */
public record Refusal(Plan plan, Catalogue catalogue) {

  /** Why there is no session to hand out. */
  public List<String> reasons() {
    List<String> lines = new ArrayList<>();
    if (secondsMissing() > 0) {
      lines.add("No feasible session: " + shortest());
    } else if (plan.score().feasible()) {
      lines.add("No feasible session: no exercise of the catalogue suits all that was asked for.");
      lines.addAll(obstacles());
    } else {
      lines.add("No feasible session: the best one found still breaks a rule.");
      lines.addAll(Unmet.rules(plan, catalogue));
      lines.addAll(obstacles());
    }
    return lines;
  }

  /** Why the session leaves wishes unmet; nothing where it meets them all. */
  public List<String> unmetWishes() {
    if (plan.score().medium() == 0) {
      return List.of();
    }
    List<String> lines = new ArrayList<>(List.of("Not all wishes are met."));
    lines.addAll(obstacles());
    return lines;
  }

  private List<String> obstacles() {
    return Obstacles.of(plan, catalogue).stream().map("In the way: "::concat).toList();
  }

  /** What was tried out and helps. */
  public List<String> remedies(List<WayOut> ways) {
    if (ways.isEmpty()) {
      return List.of("What would free it: more than two changes at once. Maybe ask for less.");
    }
    boolean whole = ways.get(0).whole();
    String first = ways.get(0).phrase();
    int missing = secondsMissing();
    String instead =
        missing > 0 && first.matches("\\d+ min")
            ? ", or a clock that is " + missing + " s shorter"
            : "";
    List<String> lines = new ArrayList<>();
    lines.add(
        (whole ? "What would free it: " : "What would help a little: ") + first + instead + ".");
    ways.stream().skip(1).forEach(way -> lines.add("  Or: " + way.phrase() + "."));
    return lines;
  }

  private int secondsMissing() {
    int shortest = SessionLength.seconds(plan.problem().clock(), 1);
    return Math.max(0, shortest - 60 * plan.problem().minutes());
  }

  private String shortest() {
    Intervals clock = plan.problem().clock();
    return "the shortest one with this clock takes "
        + SessionLength.seconds(clock, 1)
        + " s (get ready "
        + clock.getReady()
        + ", warm-up "
        + clock.warmUp()
        + ", one superset "
        + SessionLength.blockSeconds(clock) * clock.rounds()
        + ", cool-down "
        + clock.coolDown()
        + "), but the cap is "
        + plan.problem().minutes()
        + " min.";
  }
}

package counterset.score;

import counterset.model.At;
import counterset.model.Match;
import java.util.List;

/**
 * Judges one session, and puts into words what it finds: on a match as it stands, and on what
 * changes from one session to another.
 *
 * <p>What changes is told as a total, or {@link MatchByMatch}.
 */
public abstract class PlanConstraint extends Constraint {

  private final String remedy;

  PlanConstraint(String id, Weight weight, String sentence, String unit, String topic) {
    super(id, weight.level(), weight.perUnit(), sentence, unit, topic);
    this.remedy = weight.remedy();
  }

  @Override
  public final String scope() {
    return "session";
  }

  /** What would mend it, as a sentence; empty text for one that is a matter of points. */
  public final String remedy() {
    return remedy;
  }

  /**
   * What it has counted, after its topic: {@code 4 items taken up or put away}.
   *
   * @param amount units of all matches
   */
  public abstract String counted(int amount, List<Match> matches);

  /**
   * What a match means, as a clause without its places. That of a rule or a wish is told after
   * them, so it opens with a capital where a match has none.
   */
  public abstract String said(Told told);

  /** What there is more or less of, as a clause. */
  public abstract String total(Total total);

  /** Where a match is: {@code 3A to 3B}; empty text if it is about the whole session. */
  public String where(Match match) {
    return String.join(" to ", match.places().stream().map(At::toString).distinct().toList());
  }

  /** Whether it is about what happens between places, whatever stands there. */
  public boolean isBetweenPlaces() {
    return false;
  }

  /** Whether its places tell what a change is about, as it names no exercises. */
  public boolean tellsPlaces() {
    return false;
  }

  /** Whether a total is told with what it is about. */
  public boolean tellsSubjects() {
    return false;
  }
}

package counterset.score;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/** Sees one exercise at its place. */
public abstract class PlaceConstraint extends PlanConstraint implements MatchByMatch {

  PlaceConstraint(String id, Weight weight, String sentence, String unit, String topic) {
    super(id, weight, sentence, unit, topic);
  }

  /** Units for an exercise, whatever stands around it; at least 0. */
  public abstract int measure(Candidate exercise);

  /**
   * Whether the second side of a one-sided exercise counts again. Else an exercise counts once in a
   * superset.
   */
  public boolean isPerPosition() {
    return false;
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(matches.size(), "exercise");
  }

  /** What its exercise is or does, as a clause without a subject. */
  abstract String does(Told told);

  @Override
  public String said(Told told) {
    return came(told);
  }

  @Override
  public final String came(Told told) {
    return told.exercise() + " " + does(told);
  }

  @Override
  public final String went(Told told) {
    return told.exercise() + ", which " + does(told) + ", goes";
  }
}

package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.Match;
import java.util.List;

/**
 * The first superset is a pair with a big lift among the most wanted movement patterns; a unit is a
 * session that opens otherwise although such a lift can be done.
 */
public final class OpenSmall extends SessionConstraint {

  /** How many patterns count as the most wanted. */
  private static final int FIRST = 4;

  OpenSmall() {
    super(
        "openSmall",
        points(16),
        "The first superset is a pair with a big lift.",
        "per session that opens otherwise although such a lift can be done",
        "No big lift in the first pair");
  }

  @Override
  boolean matters(SessionFacts facts) {
    return facts.workedOut(Possible.class, Possible::of).isPossible();
  }

  /** Whether a session can open with a big lift in a pair. */
  private record Possible(boolean isPossible) {

    static Possible of(SessionFacts facts) {
      return new Possible(
          facts.perSuperset() > 1
              && facts.supersets() > 1
              && facts.candidates().stream().anyMatch(it -> it.usable() && opens(facts, it)));
    }
  }

  private static boolean opens(SessionFacts facts, Candidate exercise) {
    return exercise.merit().tier() >= Merit.BIG_LIFT
        && !exercise.unilateral()
        && facts.patterns().rank(exercise.merit().pattern()) < FIRST;
  }

  @Override
  void measure(SessionFacts facts, Candidate[] places, Matches matches) {
    for (int place = 0; place < facts.perSuperset(); place++) {
      if (places[place] == null || opens(facts, places[place])) {
        return;
      }
    }
    matches.match(1, 0, null);
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return String.valueOf(amount);
  }

  @Override
  public String said(Told told) {
    return "the session does not open with a big lift in a pair";
  }

  @Override
  public String total(Total total) {
    return "the session " + (total.better() ? "opens" : "no longer opens") + " with a big lift";
  }
}

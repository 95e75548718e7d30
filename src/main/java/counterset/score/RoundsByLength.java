package counterset.score;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Problem;
import counterset.timeline.SessionLength;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How many rounds the supersets of a session should get where nobody says: one where good exercises
 * can fill its places, else as many as they need, so that main lifts come again before any last
 * resort. A short session may well have a few lesser exercises instead.
 */
public final class RoundsByLength {

  private static final int MOST = 5;

  /** Up to this many minutes lesser exercises may fill a third of the places. */
  private static final int SHORT = 25;

  private RoundsByLength() {}

  /** The rounds for a problem of one round, 1 to 5. */
  public static int of(Problem problem, Catalogue catalogue) {
    List<Exercise> exercises = new ExerciseFilter(problem, catalogue).main();
    SessionFacts facts = new SessionFacts(problem, catalogue, exercises, 1);
    Map<String, Integer> placesByMovement = new HashMap<>();
    for (Candidate candidate : facts.candidates()) {
      if (candidate.merit().fillsPattern()) {
        int places = candidate.unilateral() ? 2 : 1;
        placesByMovement.merge(candidate.exercise().family(), places, Math::max);
      }
    }
    int supply = placesByMovement.values().stream().mapToInt(Integer::intValue).sum();
    if (problem.minutes() <= SHORT) {
      supply += supply / 2;
    }
    int rounds = 1;
    while (rounds < MOST && places(problem.clock(), problem.minutes(), rounds) > supply) {
      rounds++;
    }
    return rounds;
  }

  private static int places(Intervals clock, int minutes, int rounds) {
    Intervals again = clock.withRounds(rounds);
    return again.perSuperset() * SessionLength.supersetsThatFit(again, minutes);
  }
}

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
 * resort.
 */
public final class RoundsByLength {

  private static final int MOST = 3;

  /** Up to this many minutes nothing comes twice, whatever there is. */
  private static final int SHORT = 25;

  private RoundsByLength() {}

  /** The rounds for a problem of one round, 1 to 3. */
  public static int of(Problem problem, Catalogue catalogue) {
    if (problem.minutes() <= SHORT) {
      return problem.clock().rounds();
    }
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

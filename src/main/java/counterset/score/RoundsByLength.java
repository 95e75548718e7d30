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

  /** Up to this many minutes lesser exercises may fill two places of five. */
  private static final int SHORT = 25;

  private RoundsByLength() {}

  /** The rounds for a problem of one round, 1 to 5. */
  public static int of(Problem problem, Catalogue catalogue) {
    List<Exercise> exercises = new ExerciseFilter(problem, catalogue).main();
    SessionFacts facts = new SessionFacts(problem, catalogue, exercises, 1);
    Map<Integer, Map<String, Integer>> byPattern = new HashMap<>();
    for (Candidate candidate : facts.candidates()) {
      if (candidate.merit().fillsPattern()) {
        byPattern
            .computeIfAbsent(candidate.merit().pattern(), pattern -> new HashMap<>())
            .merge(candidate.exercise().family(), candidate.unilateral() ? 2 : 1, Math::max);
      }
    }
    if (byPattern.keySet().stream().noneMatch(pattern -> facts.share(pattern) > 0)) {
      return 1;
    }
    int rounds = 1;
    while (rounds < MOST
        && !fills(facts, byPattern, places(problem, rounds))
        && places(problem, rounds + 1) > problem.clock().perSuperset()) {
      rounds++;
    }
    return rounds;
  }

  /** Whether good exercises fill the places, of each pattern one more than its share at most. */
  private static boolean fills(
      SessionFacts facts, Map<Integer, Map<String, Integer>> byPattern, int places) {
    double supply = 0;
    for (Map.Entry<Integer, Map<String, Integer>> movements : byPattern.entrySet()) {
      int there = movements.getValue().values().stream().mapToInt(Integer::intValue).sum();
      double share = facts.share(movements.getKey()) * places;
      supply += share > 0 ? Math.min(there, share + 1) : 0;
    }
    return supply * (facts.problem().minutes() <= SHORT ? 1.75 : 1) >= places;
  }

  private static int places(Problem problem, int rounds) {
    Intervals again = problem.clock().withRounds(rounds);
    return again.perSuperset() * SessionLength.supersetsThatFit(again, problem.minutes());
  }
}

package counterset.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import counterset.planning.scoring.SearchScoreCalculator;
import counterset.score.Candidate;
import counterset.score.ExerciseFilter;
import counterset.score.SessionFacts;
import counterset.timeline.SessionLength;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;

/**
 * The first complete session that breaks no rule, as chance finds it: superset by superset, the
 * first draw that fits. It is what a search starts from that does not look at points.
 */
public final class ChanceSession {

  private static final int DRAWS = 3_000;
  private static final int RESTARTS = 20;

  private final SessionSolution solution;
  private final SearchScoreCalculator calculator = new SearchScoreCalculator();
  private final Random random;

  private ChanceSession(Problem problem, Catalogue catalogue, long seed) {
    SessionFacts facts =
        new SessionFacts(
            problem,
            catalogue,
            new ExerciseFilter(problem, catalogue).main(),
            SessionLength.supersetsThatFit(problem.clock(), problem.minutes()));
    solution = SessionSolutions.empty(facts, Scoring.weights(problem));
    random = new Random(seed);
  }

  /**
   * Its soft points; empty if chance finds none.
   *
   * @param problem without tracks
   */
  public static OptionalInt soft(Problem problem, Catalogue catalogue, long seed) {
    ChanceSession session = new ChanceSession(problem, catalogue, seed);
    for (int restart = 0; restart < RESTARTS; restart++) {
      if (session.isFilled()) {
        return OptionalInt.of(session.score().softScore());
      }
    }
    return OptionalInt.empty();
  }

  private boolean isFilled() {
    solution.getPlaces().stream()
        .filter(place -> !place.isPinned())
        .forEach(place -> place.setCandidate(null));
    int perSuperset = solution.getFacts().perSuperset();
    for (int first = 0; first < solution.getPlaces().size(); first += perSuperset) {
      if (!fits(solution.getPlaces().subList(first, first + perSuperset))) {
        return false;
      }
    }
    return true;
  }

  private boolean fits(List<Place> superset) {
    List<Candidate> candidates = solution.getFacts().candidates();
    for (int draw = 0; draw < DRAWS; draw++) {
      for (Place place : superset) {
        if (!place.isPinned()) {
          place.setCandidate(candidates.get(random.nextInt(candidates.size())));
        }
      }
      Candidate first = superset.get(0).getCandidate();
      if (first.unilateral() && superset.size() == 2 && !superset.get(1).isPinned()) {
        superset.get(1).setCandidate(first);
      }
      if (score().hardScore() == 0) {
        return true;
      }
    }
    return false;
  }

  private HardMediumSoftScore score() {
    return calculator.calculateScore(solution);
  }
}

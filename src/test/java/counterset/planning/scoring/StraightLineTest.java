package counterset.planning.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.analysis.ScoreAnalysis;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.api.solver.SolutionManager;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.SolverConfig;
import counterset.catalogue.Catalogues;
import counterset.fixture.Problems;
import counterset.fixture.RandomSessions;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.model.Problem;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import counterset.planning.StandIn;
import counterset.planning.constraints.SessionConstraint;
import counterset.planning.constraints.SessionConstraintProvider;
import counterset.score.Candidate;
import counterset.score.SessionFacts;
import counterset.search.Ranking;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * The straight pass that drives the search says the same as the constraint streams that specify it.
 */
class StraightLineTest {

  private static final int PLANS = 1000;

  private final Catalogue catalogue = Catalogues.embedded();
  private final SolutionManager<SessionSolution, HardMediumSoftScore> streams =
      SolutionManager.create(
          SolverFactory.create(
              new SolverConfig()
                  .withSolutionClass(SessionSolution.class)
                  .withEntityClasses(Place.class, StandIn.class)
                  .withConstraintProviderClass(SessionConstraintProvider.class)));

  @Test
  void equalsTheConstraintStreamsOnAThousandRandomPlans() {
    for (long seed = 1; seed <= PLANS; seed++) {
      SessionSolution solution = randomSolution(seed);
      ScoreAnalysis<HardMediumSoftScore> analysis = streams.analyze(solution);

      assertThat(new SearchScoreCalculator().calculateScore(solution))
          .as("score, seed %d", seed)
          .isEqualTo(analysis.score());
      assertThat(straightByConstraint(solution))
          .as("by constraint, seed %d", seed)
          .isEqualTo(streamsByConstraint(analysis));
    }
  }

  private SessionSolution randomSolution(long seed) {
    RandomSessions sessions = new RandomSessions(catalogue, seed);
    Problems problems = sessions.problem();
    Problem problem = (seed % 3 == 0 ? sessions.withTracks(problems) : problems).problem();
    List<Exercise> exercises = catalogue.exercises(Part.MAIN);
    SessionFacts facts =
        new SessionFacts(problem, catalogue, exercises, 1 + new Random(seed).nextInt(9));
    Map<String, HardMediumSoftScore> weights = new TreeMap<>();
    for (SessionConstraint constraint : SessionConstraint.values()) {
      weights.put(constraint.id(), constraint.points(constraint.weight(problem)));
    }
    SessionSolution solution = SessionSolutions.empty(facts, weights);
    List<Exercise> chosen = sessions.places(solution.getPlaces().size(), exercises);
    for (Place place : solution.getPlaces()) {
      Exercise exercise = chosen.get(place.getIndex());
      place.setCandidate(exercise == null ? null : facts.candidate(exercise.id()).orElseThrow());
    }
    castAtRandom(solution, new Random(seed));
    return solution;
  }

  /** Stand-ins that are valid, that are not, that none asked for; and none at all. */
  private static void castAtRandom(SessionSolution solution, Random random) {
    Ranking ranking = new Ranking(solution.getFacts());
    List<Candidate> all = solution.getFacts().candidates();
    for (StandIn standIn : solution.getStandIns()) {
      Candidate main = solution.getPlaces().get(standIn.getPlace()).getCandidate();
      Candidate[] valid =
          main == null ? new Candidate[0] : ranking.of(main, standIn.getTrack()).candidates();
      int dice = random.nextInt(10);
      if (dice < 2) {
        standIn.setCandidate(null);
      } else if (dice < 4 || valid.length == 0) {
        standIn.setCandidate(all.get(random.nextInt(all.size())));
      } else {
        standIn.setCandidate(valid[random.nextInt(Math.min(valid.length, 8))]);
      }
    }
  }

  /** Matches and points by constraint; one of weight 0 says nothing. */
  private static Map<String, List<Integer>> straightByConstraint(SessionSolution solution) {
    Map<String, List<Integer>> sums = new TreeMap<>();
    for (Ledger.Entry entry : Ledger.of(solution)) {
      int weight = entry.constraint().weight(solution.getFacts().problem());
      int points = entry.amount() * (entry.constraint().isReward() ? weight : -weight);
      if (points != 0) {
        sums.merge(
            entry.constraint().id(),
            List.of(1, points),
            (a, b) -> List.of(a.get(0) + b.get(0), a.get(1) + b.get(1)));
      }
    }
    return sums;
  }

  private static Map<String, List<Integer>> streamsByConstraint(
      ScoreAnalysis<HardMediumSoftScore> analysis) {
    Map<String, List<Integer>> sums = new TreeMap<>();
    analysis
        .constraintMap()
        .forEach(
            (ref, constraint) -> {
              HardMediumSoftScore score = constraint.score();
              int points = score.hardScore() + score.mediumScore() + score.softScore();
              if (constraint.matchCount() > 0 && points != 0) {
                sums.put(ref.constraintName(), List.of(constraint.matchCount(), points));
              }
            });
    return sums;
  }
}

package counterset.solve;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchType;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import counterset.planning.WeekFacts;
import counterset.planning.WeekPlace;
import counterset.planning.WeekSolution;
import counterset.planning.WeekSolutions;
import counterset.planning.WeekStandIn;
import counterset.planning.moves.WeekMoves;
import counterset.planning.scoring.WeekScoreCalculator;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Several searches for a week as one problem. They climb, so none ends below where it begins; the
 * first and every other one begins with the given sessions, the rest with nothing.
 */
final class WeekSearch {

  private final WeekFacts facts;
  private final Map<String, HardMediumSoftScore> weights;
  private final Starts<WeekSolution> searches = new Starts<>(WeekSolution::getScore);

  WeekSearch(WeekFacts facts) {
    this.facts = facts;
    this.weights = Scoring.weights(facts.problem());
  }

  /** The configuration of one search, without a limit to its length. */
  static SolverConfig config(long seed, EnvironmentMode mode) {
    LocalSearchPhaseConfig phase =
        new LocalSearchPhaseConfig()
            .withMoveSelectorConfig(
                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(WeekMoves.class))
            .withLocalSearchType(LocalSearchType.HILL_CLIMBING);
    return new SolverConfig()
        .withSolutionClass(WeekSolution.class)
        .withEntityClasses(WeekPlace.class, WeekStandIn.class)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig()
                .withEasyScoreCalculatorClass(WeekScoreCalculator.class))
        .withEnvironmentMode(mode)
        .withRandomSeed(seed)
        .withPhases(phase);
  }

  /**
   * Runs to the end, or until {@link #stop}.
   *
   * @param from the sessions to begin with, in the order of the week
   * @param starts how many searches, at least 1
   * @param limit when each of them ends
   * @return never worse than {@code from}
   */
  WeekSolution best(List<SessionSolution> from, int starts, TerminationConfig limit) {
    WeekSolution given = WeekSolutions.join(facts, from, weights);
    if (WeekMoves.tries(from) == 0) {
      return given;
    }
    List<Starts.Start<WeekSolution>> all = new ArrayList<>();
    for (int start = 0; start < starts; start++) {
      long seed = facts.problem().seed() + start * Search.SEED_STEP;
      all.add(
          new Starts.Start<>(
              config(seed, EnvironmentMode.NO_ASSERT).withTerminationConfig(limit),
              start % 2 == 0 ? WeekSolutions.join(facts, from, weights) : empty(from)));
    }
    return searches.best(all).orElse(given);
  }

  /** Only what is kept; a day on which everything is kept stays as given. */
  private WeekSolution empty(List<SessionSolution> from) {
    List<SessionSolution> sessions =
        from.stream()
            .map(
                session ->
                    WeekMoves.tries(List.of(session)) == 0
                        ? session
                        : SessionSolutions.empty(session.getFacts(), Map.of()))
            .toList();
    return WeekSolutions.join(facts, sessions, weights);
  }

  /** Ends all searches soon; what they have found so far counts. */
  void stop() {
    searches.stop();
  }

  boolean isStopped() {
    return searches.isStopped();
  }
}

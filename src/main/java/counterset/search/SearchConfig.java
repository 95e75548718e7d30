package counterset.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import java.util.ArrayList;
import java.util.List;

/**
 * The search: simulated annealing from an empty session or a given one, in phases that each begin
 * with the best of the one before (Kirkpatrick, Gelatt and Vecchi, "Optimization by simulated
 * annealing", Science 220 (1983) 671-680).
 */
final class SearchConfig {

  /**
   * A survey that may break a rule or forgo a wish for a while, since where few sessions meet all
   * of them no way may lead there from one that nearly does; then three phases about as warm as one
   * soft match.
   */
  private static final List<Phase> SURVEY_FIRST =
      List.of(
          new Phase(2, 3, 2, 40),
          new Phase(2, 0, 0, 8),
          new Phase(2, 0, 0, 4),
          new Phase(2, 0, 0, 3));

  /** The same with short surveys between the phases: every third search finds other ways so. */
  private static final List<Phase> SURVEYS_BETWEEN =
      List.of(
          new Phase(1, 1, 1, 30),
          new Phase(2, 0, 0, 8),
          new Phase(1, 3, 1, 12),
          new Phase(2, 0, 0, 4),
          new Phase(1, 3, 1, 12),
          new Phase(2, 0, 0, 3));

  /**
   * A phase.
   *
   * @param share of the moves
   * @param soft points that a move may lose when it begins, in the mean; likewise the others
   */
  private record Phase(int share, int hard, int medium, int soft) {

    /** Hotter by a factor, since the solver cools from its first move on. */
    HardMediumSoftScore temperature(double early) {
      return HardMediumSoftScore.of(hard, medium, (int) Math.round(early * soft));
    }
  }

  private SearchConfig() {}

  /**
   * The configuration of one search.
   *
   * @param start its number among the searches of one task, from 0
   * @param supersets of all sessions that can change
   */
  static SolverConfig of(long seed, int start, Limit limit, int supersets, EnvironmentMode mode) {
    List<LocalSearchPhaseConfig> phases = new ArrayList<>();
    List<Phase> plan = start % 3 < 2 ? SURVEY_FIRST : SURVEYS_BETWEEN;
    int all = plan.stream().mapToInt(Phase::share).sum();
    int done = 0;
    for (Phase phase : plan) {
      done += phase.share;
      double early = limit.isCounted() ? (double) done / phase.share : 1;
      phases.add(
          new LocalSearchPhaseConfig()
              .withMoveSelectorConfig(
                  new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(DraftMoves.class))
              .withAcceptorConfig(
                  new LocalSearchAcceptorConfig()
                      .withSimulatedAnnealingStartingTemperature(
                          phase.temperature(early).toString()))
              .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
              .withTerminationConfig(limit.end(done, phase.share, all, supersets)));
    }
    return new SolverConfig()
        .withSolutionClass(Draft.class)
        .withEntityClasses(Spot.class)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig().withIncrementalScoreCalculatorClass(DraftScore.class))
        .withEnvironmentMode(mode)
        .withRandomSeed(seed)
        .withPhases(phases.toArray(LocalSearchPhaseConfig[]::new));
  }
}

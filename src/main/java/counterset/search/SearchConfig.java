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

  /** Points that a move may lose when a phase begins, in the mean: about one soft match. */
  private static final int[] SOFT = {8, 4, 3};

  private SearchConfig() {}

  /**
   * The configuration of one search.
   *
   * @param supersets of all sessions that can change
   */
  static SolverConfig of(long seed, Limit limit, int supersets, EnvironmentMode mode) {
    List<LocalSearchPhaseConfig> phases = new ArrayList<>();
    for (int phase = 0; phase < SOFT.length; phase++) {
      int soft = SOFT[phase] * limit.early(phase);
      phases.add(
          new LocalSearchPhaseConfig()
              .withMoveSelectorConfig(
                  new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(DraftMoves.class))
              .withAcceptorConfig(
                  new LocalSearchAcceptorConfig()
                      .withSimulatedAnnealingStartingTemperature(
                          HardMediumSoftScore.ofSoft(soft).toString()))
              .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1))
              .withTerminationConfig(limit.end(phase, SOFT.length, supersets)));
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

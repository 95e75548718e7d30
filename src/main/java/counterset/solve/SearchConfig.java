package counterset.solve;

import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchType;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import counterset.planning.StandIn;
import counterset.planning.moves.SessionMoves;
import counterset.planning.scoring.SearchScoreCalculator;

/**
 * The search: the solver climbs from an empty session, and each of its moves is a whole annealing
 * walk.
 */
public final class SearchConfig {

  private SearchConfig() {}

  /** The configuration of one search, without a limit to its length. */
  public static SolverConfig of(long seed, EnvironmentMode mode) {
    LocalSearchPhaseConfig phase =
        new LocalSearchPhaseConfig()
            .withMoveSelectorConfig(
                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(SessionMoves.class))
            .withLocalSearchType(LocalSearchType.HILL_CLIMBING);
    return new SolverConfig()
        .withSolutionClass(SessionSolution.class)
        .withEntityClasses(Place.class, StandIn.class)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig()
                .withEasyScoreCalculatorClass(SearchScoreCalculator.class))
        .withEnvironmentMode(mode)
        .withRandomSeed(seed)
        .withPhases(phase);
  }

  /** A limit counted in walks. */
  public static TerminationConfig walks(int walks) {
    return new TerminationConfig().withMoveCountLimit((long) walks);
  }
}

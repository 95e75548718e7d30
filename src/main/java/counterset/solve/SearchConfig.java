package counterset.solve;

import ai.timefold.solver.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import counterset.planning.StandIn;
import counterset.planning.moves.SessionMoves;
import counterset.planning.scoring.SearchScoreCalculator;

/** The search: simulated annealing from an empty session. */
public final class SearchConfig {

  /** Near the size of a typical soft change; medium wishes are never given up for points. */
  private static final String STARTING_TEMPERATURE = "0hard/0medium/5soft";

  private SearchConfig() {}

  /** The configuration of one search, without a limit to its length. */
  public static SolverConfig of(long seed, EnvironmentMode mode) {
    LocalSearchPhaseConfig phase =
        new LocalSearchPhaseConfig()
            .withMoveSelectorConfig(
                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(SessionMoves.class))
            .withAcceptorConfig(
                new LocalSearchAcceptorConfig()
                    .withSimulatedAnnealingStartingTemperature(STARTING_TEMPERATURE))
            .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
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

  /** A limit counted in moves. */
  public static TerminationConfig moves(long moves) {
    return new TerminationConfig().withMoveCountLimit(moves);
  }
}

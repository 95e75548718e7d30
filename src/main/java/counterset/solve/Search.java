package counterset.solve;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Several searches for one session, from seeds of their own. */
final class Search {

  /** Keeps the seeds of neighbouring requests apart. */
  static final long SEED_STEP = 1_000_003;

  private final SessionFacts facts;
  private final Map<String, HardMediumSoftScore> weights;
  private final Starts<SessionSolution> searches;

  Search(SessionFacts facts, Map<String, HardMediumSoftScore> weights) {
    this(facts, weights, Runtime.getRuntime().availableProcessors());
  }

  /** A search on at most so many threads, at least 1. */
  Search(SessionFacts facts, Map<String, HardMediumSoftScore> weights, int mostThreads) {
    this.facts = facts;
    this.weights = weights;
    this.searches = new Starts<>(SessionSolution::getScore, mostThreads);
  }

  /**
   * Runs from an empty session to the end, or until {@link #stop}.
   *
   * @param starts how many searches, at least 1
   * @param limit when each of them ends
   */
  SessionSolution best(int starts, TerminationConfig limit) {
    return best(starts, limit, () -> SessionSolutions.empty(facts, weights));
  }

  /**
   * Runs from a given session.
   *
   * @param from makes it, anew for each search
   */
  SessionSolution best(int starts, TerminationConfig limit, Supplier<SessionSolution> from) {
    SessionSolution given = from.get();
    boolean nothingToDecide =
        given.getStandIns().isEmpty()
            && given.getPlaces().stream().allMatch(place -> place.isPinned());
    if (nothingToDecide || facts.candidates().isEmpty()) {
      return given;
    }
    List<Starts.Start<SessionSolution>> all = new ArrayList<>();
    for (int start = 0; start < starts; start++) {
      long seed = facts.problem().seed() + start * SEED_STEP;
      all.add(
          new Starts.Start<>(
              SearchConfig.of(seed, EnvironmentMode.NO_ASSERT).withTerminationConfig(limit),
              from.get()));
    }
    return searches.best(all).orElse(given);
  }

  /**
   * Tells of each better session when it is found, in the thread that found it. For measuring.
   *
   * @param watcher to be set before the search runs
   */
  void watch(Consumer<HardMediumSoftScore> watcher) {
    searches.watch(watcher);
  }

  /** Ends all searches soon; what they have found so far counts. */
  void stop() {
    searches.stop();
  }

  boolean isStopped() {
    return searches.isStopped();
  }
}

package counterset.solve;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import io.micrometer.core.instrument.Metrics;
import io.micrometer.core.instrument.config.MeterFilter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/**
 * Several searches from seeds of their own, spread over the cores. The best result wins and the
 * earliest of equal ones, so that the number of cores changes nothing but the time.
 */
final class Search {

  /** Keeps the seeds of neighbouring requests apart. */
  private static final long SEED_STEP = 1_000_003;

  static {
    // Nobody reads the solver's meters here, and several solvers would quarrel over their names.
    Metrics.globalRegistry.config().meterFilter(MeterFilter.deny());
  }

  private final SessionFacts facts;
  private final Map<String, HardMediumSoftScore> weights;
  private final List<Solver<SessionSolution>> running = new ArrayList<>();
  private boolean stopped;
  // Null where nobody watches.
  private Consumer<HardMediumSoftScore> watcher;

  Search(SessionFacts facts, Map<String, HardMediumSoftScore> weights) {
    this.facts = facts;
    this.weights = weights;
  }

  /**
   * Tells of whatever any of the searches finds that is better than what it had, on its thread.
   *
   * @param watcher to be set before the search runs
   */
  void watch(Consumer<HardMediumSoftScore> watcher) {
    this.watcher = watcher;
  }

  /**
   * Runs to the end, or until {@link #stop}.
   *
   * @param starts how many searches, at least 1
   * @param limit when each of them ends
   */
  SessionSolution best(int starts, TerminationConfig limit) {
    SessionSolution empty = SessionSolutions.empty(facts, weights);
    boolean nothingToDecide =
        empty.getStandIns().isEmpty()
            && empty.getPlaces().stream().allMatch(place -> place.isPinned());
    if (nothingToDecide || facts.candidates().isEmpty()) {
      return empty;
    }
    int threads = Math.min(starts, Runtime.getRuntime().availableProcessors());
    ExecutorService executor = Executors.newFixedThreadPool(threads, Search::daemon);
    try {
      List<Future<SessionSolution>> results = new ArrayList<>();
      for (int start = 0; start < starts; start++) {
        results.add(executor.submit(search(facts.problem().seed() + start * SEED_STEP, limit)));
      }
      SessionSolution best = empty;
      for (Future<SessionSolution> result : results) {
        SessionSolution solution = result.get();
        if (solution.getScore() != null
            && (best.getScore() == null || solution.getScore().compareTo(best.getScore()) > 0)) {
          best = solution;
        }
      }
      return best;
    } catch (ExecutionException e) {
      throw new IllegalStateException("A search failed.", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Waiting for the searches was interrupted.", e);
    } finally {
      executor.shutdownNow();
    }
  }

  private Callable<SessionSolution> search(long seed, TerminationConfig limit) {
    return () -> {
      SolverConfig config =
          SearchConfig.of(seed, EnvironmentMode.NO_ASSERT).withTerminationConfig(limit);
      Solver<SessionSolution> solver = SolverFactory.<SessionSolution>create(config).buildSolver();
      if (watcher != null) {
        solver.addEventListener(event -> watcher.accept(event.getNewBestSolution().getScore()));
      }
      synchronized (running) {
        if (stopped) {
          return SessionSolutions.empty(facts, weights);
        }
        running.add(solver);
      }
      return solver.solve(SessionSolutions.empty(facts, weights));
    };
  }

  /** Ends all searches soon; what they have found so far counts. */
  void stop() {
    synchronized (running) {
      stopped = true;
      running.forEach(Solver::terminateEarly);
    }
  }

  boolean isStopped() {
    synchronized (running) {
      return stopped;
    }
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "search");
    thread.setDaemon(true);
    return thread;
  }
}

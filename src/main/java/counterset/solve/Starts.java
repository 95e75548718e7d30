package counterset.solve;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.SolverConfig;
import io.micrometer.core.instrument.Metrics;
import io.micrometer.core.instrument.config.MeterFilter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Several searches spread over the cores. The best result wins and the earliest of equal ones, so
 * that the number of cores changes nothing but the time.
 *
 * @param <S> what is being planned
 */
final class Starts<S> {

  static {
    // Nobody reads the solver's meters here, and several solvers would quarrel over their names.
    Metrics.globalRegistry.config().meterFilter(MeterFilter.deny());
  }

  private final Function<S, HardMediumSoftScore> score;
  private final int mostThreads;
  private final List<Solver<S>> running = new ArrayList<>();
  private boolean stopped;
  // Null where nobody watches.
  private Consumer<HardMediumSoftScore> watcher;

  /**
   * No search yet.
   *
   * @param score what the solver gave a solution; null if it has not looked at it
   */
  Starts(Function<S, HardMediumSoftScore> score) {
    this(score, Runtime.getRuntime().availableProcessors());
  }

  /**
   * No search yet.
   *
   * @param mostThreads how many may run at once, at least 1
   */
  Starts(Function<S, HardMediumSoftScore> score, int mostThreads) {
    this.score = score;
    this.mostThreads = mostThreads;
  }

  /**
   * Runs all to their ends, or until {@link #stop}.
   *
   * @return the best; empty if none came far enough to be scored
   */
  Optional<S> best(List<Start<S>> starts) {
    int threads = Math.max(1, Math.min(starts.size(), mostThreads));
    ExecutorService executor = Executors.newFixedThreadPool(threads, Starts::daemon);
    try {
      List<Future<S>> results = new ArrayList<>();
      for (Start<S> start : starts) {
        results.add(executor.submit(search(start)));
      }
      S best = null;
      for (Future<S> result : results) {
        S solution = result.get();
        if (score.apply(solution) != null
            && (best == null || score.apply(solution).compareTo(score.apply(best)) > 0)) {
          best = solution;
        }
      }
      return Optional.ofNullable(best);
    } catch (ExecutionException e) {
      throw new IllegalStateException("A search failed.", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Waiting for the searches was interrupted.", e);
    } finally {
      executor.shutdownNow();
    }
  }

  private Callable<S> search(Start<S> start) {
    return () -> {
      Solver<S> solver = SolverFactory.<S>create(start.config()).buildSolver();
      if (watcher != null) {
        solver.addEventListener(event -> watcher.accept(score.apply(event.getNewBestSolution())));
      }
      synchronized (running) {
        if (stopped) {
          return start.from();
        }
        running.add(solver);
      }
      return solver.solve(start.from());
    };
  }

  /** Tells of each better solution when it is found; to be set before the searches run. */
  void watch(Consumer<HardMediumSoftScore> watcher) {
    this.watcher = watcher;
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

  /** One search: how, and from where. Each needs a solution of its own. */
  record Start<S>(SolverConfig config, S from) {}
}

package counterset.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.impl.solver.DefaultSolver;
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

/**
 * Several searches spread over the cores. The best result wins and the earliest of equal ones, so
 * that the number of cores changes nothing but the time.
 */
final class Starts {

  static {
    // Nobody reads the solver's meters here, and several solvers would quarrel over their names.
    Metrics.globalRegistry.config().meterFilter(MeterFilter.deny());
  }

  private final int mostThreads;
  private final List<Solver<Draft>> running = new ArrayList<>();
  private boolean stopped;
  // Null where nobody watches.
  private Consumer<HardMediumSoftScore> watcher;

  /** No search yet; at most so many will run at once, at least 1. */
  Starts(int mostThreads) {
    this.mostThreads = mostThreads;
  }

  /** Runs all to their ends, or until {@link #stop}. */
  Found best(List<Start> starts) {
    int threads = Math.max(1, Math.min(starts.size(), mostThreads));
    ExecutorService executor = Executors.newFixedThreadPool(threads, Starts::daemon);
    try {
      List<Future<Found>> results = new ArrayList<>();
      for (Start start : starts) {
        results.add(executor.submit(search(start)));
      }
      Found all = new Found(Optional.empty(), 0);
      for (Future<Found> result : results) {
        all = all.and(result.get());
      }
      return all;
    } catch (ExecutionException e) {
      throw new IllegalStateException("A search failed.", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Waiting for the searches was interrupted.", e);
    } finally {
      executor.shutdownNow();
    }
  }

  private Callable<Found> search(Start start) {
    return () -> {
      // The only one there is; it tells how many moves it made.
      DefaultSolver<Draft> solver =
          (DefaultSolver<Draft>) SolverFactory.<Draft>create(start.config()).buildSolver();
      if (watcher != null) {
        solver.addEventListener(event -> watcher.accept(event.getNewBestSolution().getScore()));
      }
      synchronized (running) {
        if (stopped) {
          return new Found(Optional.empty(), 0);
        }
        running.add(solver);
      }
      Draft best = solver.solve(start.from());
      return new Found(
          Optional.of(best).filter(draft -> draft.getScore() != null),
          solver.getMoveEvaluationCount());
    };
  }

  /** Tells of each better draft when it is found; to be set before the searches run. */
  void watch(Consumer<HardMediumSoftScore> whoever) {
    watcher = whoever;
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

  /** One search: how, and from where. Each needs a draft of its own. */
  record Start(SolverConfig config, Draft from) {}

  /**
   * What searches found.
   *
   * @param best empty if none came far enough to be scored
   * @param moves that the solver made, as it counts them
   */
  record Found(Optional<Draft> best, long moves) {

    private Found and(Found later) {
      boolean better =
          best.isEmpty()
              || later.best.isPresent()
                  && later.best.get().getScore().compareTo(best.get().getScore()) > 0;
      return new Found(better ? later.best : best, moves + later.moves);
    }
  }
}

package counterset.search;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import counterset.score.Lineup;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntFunction;

/** Several searches for one task, from seeds of their own, spread over the cores. */
final class Search {

  /** Keeps the seeds of neighbouring requests apart. */
  private static final long SEED_STEP = 1_000_003;

  private final Starts starts;
  private long moves;

  /** A search on at most so many threads, at least 1. */
  Search(int mostThreads) {
    starts = new Starts(mostThreads);
  }

  Search() {
    this(Runtime.getRuntime().availableProcessors());
  }

  /**
   * Runs to the end, or until {@link #stop}.
   *
   * @return the sessions; the given ones if there is nothing to decide
   */
  List<Lineup> best(Task task, long seed, Limit limit) {
    return best(start -> task, seed, limit);
  }

  /**
   * Runs to the end, or until {@link #stop}.
   *
   * @param tasks by start, from 0: the same sessions, perhaps begun with otherwise
   */
  List<Lineup> best(IntFunction<Task> tasks, long seed, Limit limit) {
    Task given = tasks.apply(0);
    if (!given.isMovable()) {
      return Draft.of(given).lineups();
    }
    int supersets =
        given.days().stream()
            .filter(Task.Day::isMovable)
            .mapToInt(day -> day.from().facts().supersets())
            .sum();
    List<Starts.Start> all = new ArrayList<>();
    for (int start = 0; start < limit.starts(); start++) {
      all.add(
          new Starts.Start(
              SearchConfig.of(
                  seed + start * SEED_STEP, start, limit, supersets, EnvironmentMode.NO_ASSERT),
              Draft.of(tasks.apply(start))));
    }
    Starts.Found found = starts.best(all);
    moves += found.moves();
    return found.best().orElseGet(() -> Draft.of(given)).lineups();
  }

  /**
   * Tells of each better draft when it is found, in the thread that found it. For measuring.
   *
   * @param watcher to be set before the search runs
   */
  void watch(Consumer<HardMediumSoftScore> watcher) {
    starts.watch(watcher);
  }

  /** How many moves the solver has made. */
  long moves() {
    return moves;
  }

  /** Ends all searches soon; what they have found so far counts. */
  void stop() {
    starts.stop();
  }

  boolean isStopped() {
    return starts.isStopped();
  }
}

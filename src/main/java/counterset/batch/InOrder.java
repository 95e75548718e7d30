package counterset.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Work on many things at once, told in their order.
 *
 * @param threads how many at once, at least 1
 */
public record InOrder(int threads) {

  /**
   * Does all of it.
   *
   * @param work on one of them, in any thread
   * @param told each result, in the order of the things and in this thread, as soon as it and those
   *     before it are there
   */
  public <T, R> List<R> all(List<T> things, Function<T, R> work, Consumer<R> told) {
    ExecutorService executor =
        Executors.newFixedThreadPool(
            Math.min(threads, Math.max(1, things.size())), InOrder::daemon);
    try {
      List<Future<R>> running = new ArrayList<>();
      things.forEach(thing -> running.add(executor.submit(() -> work.apply(thing))));
      List<R> results = new ArrayList<>();
      for (Future<R> future : running) {
        results.add(future.get());
        told.accept(results.get(results.size() - 1));
      }
      return results;
    } catch (ExecutionException e) {
      throw new IllegalStateException("A file could not be worked on.", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Waiting for the files was interrupted.", e);
    } finally {
      executor.shutdownNow();
    }
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "batch");
    thread.setDaemon(true);
    return thread;
  }
}

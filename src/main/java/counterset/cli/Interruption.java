package counterset.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/**
 * Ctrl-C while a plan is being made: the search stops, the best plan so far is printed, and the
 * process ends with the status of that plan. A second thread does the printing, so the hook waits
 * for it.
 */
final class Interruption {

  private static final int PATIENCE_SECONDS = 10;
  private static final CountDownLatch PRINTED = new CountDownLatch(1);
  private static final AtomicInteger STATUS = new AtomicInteger(Exit.INTERNAL);

  private Interruption() {}

  /** Does some work; when the process is asked to end meanwhile, tells the work to stop. */
  static <T> T during(Supplier<T> work, Runnable stop) {
    Thread hook = new Thread(() -> stopAndWait(stop));
    Runtime.getRuntime().addShutdownHook(hook);
    try {
      return work.get();
    } finally {
      remove(hook);
    }
  }

  private static void stopAndWait(Runnable stop) {
    stop.run();
    try {
      if (PRINTED.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        Runtime.getRuntime().halt(STATUS.get());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Everything is printed; a waiting hook may end the process. */
  static void finish(int status) {
    STATUS.set(status);
    PRINTED.countDown();
  }

  private static void remove(Thread hook) {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The process is ending already, and the hook waits for what is printed next.
    }
  }
}

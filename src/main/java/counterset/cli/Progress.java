package counterset.cli;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/** A line on a terminal while the work is long. */
final class Progress {

  private static final int FIRST_AFTER_SECONDS = 2;
  private static final int WIDTH = 70;

  private Progress() {}

  /** Does some work; from its second second on, says how long it has been going. */
  static <T> T during(Shell shell, String doing, Supplier<T> work) {
    if (!shell.progress()) {
      return work.get();
    }
    AtomicInteger seconds = new AtomicInteger(FIRST_AFTER_SECONDS);
    ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor(Progress::daemon);
    timer.scheduleAtFixedRate(
        () ->
            show(
                shell,
                doing + " " + seconds.getAndIncrement() + " s (Ctrl-C prints the best so far)"),
        FIRST_AFTER_SECONDS,
        1,
        TimeUnit.SECONDS);
    try {
      return work.get();
    } finally {
      timer.shutdownNow();
      if (seconds.get() > FIRST_AFTER_SECONDS) {
        show(shell, " ".repeat(WIDTH) + "\r");
      }
    }
  }

  private static void show(Shell shell, String line) {
    shell.err().print("\r" + line);
    shell.err().flush();
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "progress");
    thread.setDaemon(true);
    return thread;
  }
}

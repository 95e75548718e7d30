package counterset.cli;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** A line on a terminal while the work is long. */
final class Progress implements AutoCloseable {

  private final Shell shell;
  private final ScheduledExecutorService timer;
  private volatile boolean shown;

  Progress(Shell shell, String doing) {
    this.shell = shell;
    if (!shell.progress()) {
      timer = null;
      return;
    }
    timer =
        Executors.newSingleThreadScheduledExecutor(
            work -> {
              Thread thread = new Thread(work, "progress");
              thread.setDaemon(true);
              return thread;
            });
    AtomicInteger seconds = new AtomicInteger(1);
    timer.scheduleAtFixedRate(
        () -> {
          shown = true;
          shell.err().print("\r" + doing + " " + seconds.incrementAndGet() + " s (Ctrl-C prints the best so far)");
          shell.err().flush();
        },
        2,
        1,
        TimeUnit.SECONDS);
  }

  @Override
  public void close() {
    if (timer != null) {
      timer.shutdownNow();
      if (shown) {
        shell.err().print("\r" + " ".repeat(70) + "\r");
        shell.err().flush();
      }
    }
  }
}

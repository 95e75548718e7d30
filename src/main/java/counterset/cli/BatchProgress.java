package counterset.cli;

/** A bar on a terminal: how many files are done and how long the others may take. */
final class BatchProgress {

  private static final int BAR = 30;
  private static final int WIDTH = 78;

  private final Shell shell;
  private final int all;
  private final long start = System.nanoTime();

  private int done;
  private int kept;

  BatchProgress(Shell shell, int all) {
    this.shell = shell;
    this.all = all;
  }

  /** One more is done; one that was kept from an earlier run tells nothing about the time. */
  synchronized void done(boolean wasKept) {
    done++;
    kept += wasKept ? 1 : 0;
    show();
  }

  /** Makes room for a row of results. */
  synchronized void clear() {
    if (shell.progress()) {
      shell.err().print("\r" + " ".repeat(WIDTH) + "\r");
      shell.err().flush();
    }
  }

  synchronized void show() {
    if (shell.progress() && done < all) {
      shell.err().print("\r" + line(done, kept, all, (System.nanoTime() - start) / 1_000_000_000));
      shell.err().flush();
    }
  }

  /** The bar after some seconds. */
  static String line(int done, int kept, int all, long seconds) {
    int filled = BAR * done / all;
    String bar = "[" + "#".repeat(filled) + ".".repeat(BAR - filled) + "] " + done + " of " + all;
    int fresh = done - kept;
    String left = fresh == 0 ? "" : ", about " + left(seconds * (all - done) / fresh) + " left";
    return (bar + left + " ".repeat(WIDTH)).substring(0, WIDTH);
  }

  private static String left(long seconds) {
    return seconds < 60
        ? seconds + " s"
        : seconds < 3600 ? (seconds + 30) / 60 + " min" : (seconds + 1800) / 3600 + " h";
  }
}

package counterset.search;

/** Lets a longer job of several searches be ended early, from any thread. */
final class Halt {

  private volatile Search search;
  private volatile boolean stopped;

  /** Notes the search that runs next. */
  Search begin(Search next) {
    search = next;
    if (stopped) {
      next.stop();
    }
    return next;
  }

  /** Ends the search that runs, and all that follow. */
  void stop() {
    stopped = true;
    Search current = search;
    if (current != null) {
      current.stop();
    }
  }

  boolean isStopped() {
    return stopped;
  }
}

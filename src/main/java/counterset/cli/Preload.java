package counterset.cli;

import counterset.solve.Rehearsal;

/** Loads what a command will need while the catalogue is still being read. */
final class Preload {

  private Preload() {}

  /** Loads the classes of the solver in the background. */
  static void solver() {
    Thread thread = new Thread(Rehearsal::run, "preload");
    thread.setDaemon(true);
    thread.start();
  }
}

package counterset.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;

/**
 * What a command finds around itself, passed in so that tests can stand in for it.
 *
 * @param out for results
 * @param err for messages and progress
 * @param colour whether results may be coloured
 * @param progress whether progress lines are welcome
 * @param folder what relative paths start from
 * @param clock what day it is, for whoever logs a session without naming its day; nothing else may
 *     depend on it
 */
record Shell(
    PrintWriter out, PrintWriter err, boolean colour, boolean progress, Path folder, Clock clock) {

  /** With the clock and the time zone of this machine. */
  Shell(PrintWriter out, PrintWriter err, boolean colour, boolean progress, Path folder) {
    this(out, err, colour, progress, folder, Clock.systemDefaultZone());
  }

  /** A path as the coach wrote it, found from the folder of this shell. */
  Path path(String written) {
    return folder.resolve(written);
  }

  /** A message, on a line of its own. */
  void say(String message) {
    err.print(message + "\n");
    err.flush();
  }
}

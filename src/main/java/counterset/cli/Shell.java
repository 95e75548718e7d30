package counterset.cli;

import counterset.catalogue.Catalogues;
import counterset.model.Catalogue;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.function.Supplier;

/**
 * What a command finds around itself, passed in so that tests can stand in for it.
 *
 * @param out for results
 * @param err for messages and progress
 * @param colour whether results may be coloured
 * @param progress whether progress lines are welcome
 * @param folder what relative paths start from
 * @param in what is typed or piped in, for whoever names {@code -} as a file
 * @param clock what day it is, for whoever logs a session without naming its day; nothing else may
 *     depend on it
 * @param catalogue the exercises of whoever names no other catalogue
 */
record Shell(
    PrintWriter out,
    PrintWriter err,
    boolean colour,
    boolean progress,
    Path folder,
    InputStream in,
    Clock clock,
    Supplier<Catalogue> catalogue) {

  /** With the clock and the time zone of this machine. */
  Shell(PrintWriter out, PrintWriter err, boolean colour, boolean progress, Path folder) {
    this(out, err, colour, progress, folder, InputStream.nullInputStream());
  }

  /** With the clock and the time zone of this machine, and with what is piped in. */
  Shell(
      PrintWriter out,
      PrintWriter err,
      boolean colour,
      boolean progress,
      Path folder,
      InputStream in) {
    this(out, err, colour, progress, folder, in, Clock.systemDefaultZone(), Catalogues::embedded);
  }

  /** With nothing piped in. */
  Shell(
      PrintWriter out,
      PrintWriter err,
      boolean colour,
      boolean progress,
      Path folder,
      Clock clock) {
    this(
        out,
        err,
        colour,
        progress,
        folder,
        InputStream.nullInputStream(),
        clock,
        Catalogues::embedded);
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

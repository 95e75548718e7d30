package counterset.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;

/** The way in. */
public final class Main {

  private static final int BUFFER_BYTES = 1 << 18;

  private Main() {}

  /** Runs one command and ends the process with its exit status. */
  public static void main(String[] args) {
    OptionalInt elsewhere = Relaunch.run(args);
    if (elsewhere.isPresent()) {
      System.exit(elsewhere.getAsInt());
    }
    boolean outIsTerminal = isTerminal(1);
    boolean noColour = !System.getenv().getOrDefault("NO_COLOR", "").isEmpty();
    boolean dumb = "dumb".equals(System.getenv("TERM"));
    Shell shell =
        new Shell(
            writer(FileDescriptor.out),
            writer(FileDescriptor.err),
            outIsTerminal && !noColour && !dumb,
            isTerminal(2) && !dumb,
            Path.of(""),
            System.in);
    int status = Commands.run(shell, args);
    shell.out().flush();
    shell.err().flush();
    Interruption.finish(status);
    System.exit(status);
  }

  /** Holds back what is printed until it is complete: whoever interrupts it gets no half plan. */
  private static PrintWriter writer(FileDescriptor descriptor) {
    OutputStream whole = new BufferedOutputStream(new FileOutputStream(descriptor), BUFFER_BYTES);
    return new PrintWriter(new OutputStreamWriter(whole, StandardCharsets.UTF_8));
  }

  /**
   * Java 17 tells only whether both ends are a terminal; where the system shows its descriptors,
   * ask those.
   */
  private static boolean isTerminal(int descriptor) {
    Path link = Path.of("/proc/self/fd/" + descriptor);
    try {
      String target = Files.isSymbolicLink(link) ? Files.readSymbolicLink(link).toString() : "";
      return target.isEmpty()
          ? System.console() != null
          : target.startsWith("/dev/pts/") || target.startsWith("/dev/tty");
    } catch (IOException e) {
      return System.console() != null;
    }
  }
}

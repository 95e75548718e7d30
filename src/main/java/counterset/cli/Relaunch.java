package counterset.cli;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/**
 * Hands a command from {@code java -jar} to the script beside the jar.
 *
 * <p>What makes short runs fast can only be said when a Java machine starts, and a jar cannot say
 * it. So the machine that {@code java -jar} started does nothing but start the script, hand it its
 * terminal, and wait. Whoever gives options to {@code java} has chosen otherwise and is left alone.
 */
final class Relaunch {

  /** The encoding of arguments; what is read may have come in another one. */
  private static final String ENCODING = System.getProperty("file.encoding", "UTF-8");

  private Relaunch() {}

  /** The exit status of the script; empty if this machine has to do the work itself. */
  static OptionalInt run(String[] args) {
    Path jar = Path.of(System.getProperty("java.class.path", "")).toAbsolutePath();
    Path script = jar.resolveSibling("counterset");
    boolean possible =
        jar.endsWith("counterset.jar") && Files.isRegularFile(script) && Files.isExecutable(script);
    if (!possible || hasOptions(args) || !survive(args, ENCODING)) {
      return OptionalInt.empty();
    }
    List<String> command = new ArrayList<>(List.of(script.toString()));
    command.addAll(Arrays.asList(args));
    try {
      ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
      builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
      Process process = builder.start();
      Runtime.getRuntime().addShutdownHook(new PassOn(process));
      return OptionalInt.of(process.waitFor());
    } catch (IOException e) {
      return OptionalInt.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return OptionalInt.of(Exit.INTERNAL);
    }
  }

  /** Whether this machine was started with options of its own, as far as the system tells. */
  private static boolean hasOptions(String[] args) {
    String[] all = ProcessHandle.current().info().arguments().orElse(new String[0]);
    boolean plain = all.length == args.length + 2 && all[0].equals("-jar");
    return !plain
        || System.getenv("JAVA_TOOL_OPTIONS") != null
        || System.getenv("JDK_JAVA_OPTIONS") != null;
  }

  /**
   * Whether a process gets the arguments as they are: they are handed to it in an encoding. No
   * streams and no lambdas here: this machine has no archive and would have to make them.
   */
  static boolean survive(String[] args, String encoding) {
    if (!Charset.isSupported(encoding)) {
      return false;
    }
    Charset charset = Charset.forName(encoding);
    for (String arg : args) {
      if (!new String(arg.getBytes(charset), charset).equals(arg)) {
        return false;
      }
    }
    return true;
  }

  /**
   * This machine is asked to end: so is the other, which prints what it has, and this one waits for
   * it.
   */
  private static final class PassOn extends Thread {

    private final Process process;

    PassOn(Process process) {
      this.process = process;
    }

    @Override
    public void run() {
      if (!process.isAlive()) {
        return;
      }
      process.destroy();
      try {
        Runtime.getRuntime().halt(process.waitFor());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }
}

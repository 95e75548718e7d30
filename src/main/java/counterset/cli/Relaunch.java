package counterset.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/**
 * Runs a short command in a Java machine that is set up for short runs.
 *
 * <p>A plan takes about a second. The optimising compiler works through most of that second and
 * pays back nothing, on two cores it even doubles the time, and it can only be switched off when a
 * machine starts; so can the collector that takes as much memory as there is. So the machine that
 * {@code java -jar} started does nothing but start another, hand it its terminal, and wait. Whoever
 * gives options to {@code java} has chosen otherwise and is left alone; long searches keep the
 * optimising compiler, which makes them faster. The script beside the jar starts the other machine
 * at once.
 */
final class Relaunch {

  private static final String MARK = "counterset.relaunched";

  /** What such a Java machine is given; the paths of archive and jar follow. */
  static final List<String> SETTINGS =
      List.of(
          "-XX:+UseSerialGC",
          // A young generation that is emptied more often costs nothing here and halves the memory.
          "-Xms48m",
          "-Xmn24m",
          "-XX:-UsePerfData",
          // Where the archive was made for, if that is free: moving it costs more than it hides.
          "-XX:+UnlockDiagnosticVMOptions",
          "-XX:ArchiveRelocationMode=0",
          "-XX:+IgnoreUnrecognizedVMOptions",
          "-Xshare:auto",
          "-Xlog:disable",
          "-D" + MARK + "=true");

  /** What it is given for a short run besides: no optimising compiler. */
  static final String SHORT = "-XX:TieredStopAtLevel=1";

  /** Words of a command line that ask for a search so long that the optimising compiler pays. */
  static final List<String> LONG = List.of("--seconds", "thorough");

  private Relaunch() {}

  /** The exit status of the other machine; empty if this one has to do the work itself. */
  static OptionalInt run(String[] args) {
    Path jar = Path.of(System.getProperty("java.class.path", ""));
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    boolean possible =
        jar.toString().endsWith(".jar") && Files.isRegularFile(jar) && Files.isExecutable(java);
    if (!possible || Boolean.getBoolean(MARK) || !plans(args) || hasOptions(args)) {
      return OptionalInt.empty();
    }
    List<String> command = new ArrayList<>(List.of(java.toString()));
    command.addAll(SETTINGS);
    if (!isLong(args)) {
      command.add(SHORT);
    }
    command.add("-XX:SharedArchiveFile=" + jar.toAbsolutePath().resolveSibling("counterset.jsa"));
    command.addAll(List.of("-cp", jar.toAbsolutePath().toString(), Main.class.getName()));
    command.addAll(Arrays.asList(args));
    try {
      Process process = new ProcessBuilder(command).inheritIO().start();
      Runtime.getRuntime().addShutdownHook(new PassOn(process));
      return OptionalInt.of(process.waitFor());
    } catch (IOException e) {
      return OptionalInt.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return OptionalInt.of(Exit.INTERNAL);
    }
  }

  /** No streams and no lambdas here: this machine has no archive and would have to make them. */
  private static boolean plans(String[] args) {
    for (String arg : args) {
      if (arg.equals("plan")) {
        return true;
      }
    }
    return false;
  }

  private static boolean isLong(String[] args) {
    for (String arg : args) {
      for (String word : LONG) {
        if (arg.contains(word)) {
          return true;
        }
      }
    }
    return false;
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

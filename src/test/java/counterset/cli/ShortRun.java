package counterset.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** How the program starts the Java machine that makes a plan. */
public final class ShortRun {

  private ShortRun() {}

  /**
   * The start of a command that goes on with a main class of the test classes and its arguments.
   *
   * @param target the folder of the packaged program
   */
  public static List<String> command(Path target) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("@" + target.resolve("counterset.options"));
    command.add("-XX:SharedArchiveFile=" + target.resolve("counterset.jsa"));
    // The archive asks for its jar to come first.
    command.add("-cp");
    command.add(
        target.resolve("counterset.jar")
            + System.getProperty("path.separator")
            + target.resolve("test-classes"));
    return command;
  }
}

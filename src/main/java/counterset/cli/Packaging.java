package counterset.cli;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.List;

/**
 * What the build does when the jar is ready: commands one after another, for the Java machine to
 * note which classes they need; those go into the archive beside the jar.
 */
final class Packaging {

  private static final List<List<String>> REHEARSAL =
      List.of(
          List.of("plan", "10 min, whole body, dumbbells, loop band, sore knees"),
          List.of("plan", "8 min, core", "--effort", "quick", "--format", "json"),
          List.of("catalogue", "show", "goblet-squat"),
          List.of("catalogue", "list", "squat"),
          List.of("schema"),
          List.of("--help"),
          List.of("--version"));

  private Packaging() {}

  /**
   * Runs the commands.
   *
   * @param args the folder of the jar
   */
  public static void main(String[] args) {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    Shell shell = new Shell(nowhere, nowhere, false, false, Path.of(args[0]));
    for (List<String> command : REHEARSAL) {
      int status = Commands.run(shell, command.toArray(String[]::new));
      if (status != Exit.DONE) {
        throw new IllegalStateException(
            "The command (" + String.join(" ", command) + ") ended with " + status + ".");
      }
    }
  }
}

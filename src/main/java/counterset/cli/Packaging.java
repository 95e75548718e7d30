package counterset.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * What the build does when the jar is ready: it writes the script that starts it, and runs commands
 * one after another for the Java machine to note which classes they need; those go into the archive
 * beside the jar.
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
   * Packages a jar.
   *
   * @param args the folder of the jar
   * @throws IOException if the script cannot be written
   */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    Path script = folder.resolve("counterset");
    Files.writeString(script, Script.text(), StandardCharsets.UTF_8);
    if (!script.toFile().setExecutable(true, false)) {
      throw new IOException("The script (" + script + ") cannot be made executable.");
    }
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    Shell shell = new Shell(nowhere, nowhere, false, false, folder);
    for (List<String> command : REHEARSAL) {
      int status = Commands.run(shell, command.toArray(String[]::new));
      if (status != Exit.DONE) {
        throw new IllegalStateException(
            "The command (" + String.join(" ", command) + ") ended with " + status + ".");
      }
    }
  }
}

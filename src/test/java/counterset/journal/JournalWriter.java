package counterset.journal;

import counterset.fixture.Entries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A process that appends entries one after the other and says the number of each that is in the
 * journal.
 */
final class JournalWriter {

  private JournalWriter() {}

  /** Arguments: the journal, the first number, how many. */
  public static void main(String[] args) {
    Journal journal = new Journal(Path.of(args[0]));
    int first = Integer.parseInt(args[1]);
    for (int i = first; i < first + Integer.parseInt(args[2]); i++) {
      journal.append(Entries.full(i));
      System.out.print(i + "\n");
      System.out.flush();
    }
  }

  static Process start(Path file, int first, int count, Path said) throws IOException {
    Path java = Path.of(System.getProperty("java.home"), "bin", "java");
    return new ProcessBuilder(
            List.of(
                java.toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xshare:auto",
                "-cp",
                System.getProperty("java.class.path"),
                JournalWriter.class.getName(),
                file.toString(),
                String.valueOf(first),
                String.valueOf(count)))
        .redirectOutput(said.toFile())
        .redirectError(said.resolveSibling("errors").toFile())
        .start();
  }

  /** The numbers that a process has said so far; a last line without its end does not count. */
  static List<Integer> said(Path said) throws IOException {
    String text = Files.readString(said);
    return text.substring(0, text.lastIndexOf('\n') + 1).lines().map(Integer::valueOf).toList();
  }
}

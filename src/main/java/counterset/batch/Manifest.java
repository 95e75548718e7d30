package counterset.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Which files of a batch are finished: one JSON object a line.
 *
 * <p>While the batch runs a line is added whenever a file is finished, in one piece and after its
 * results are in their places, so that a killed run leaves at most one cut line, which is passed
 * over. At its end the whole is written anew in the order of the folder.
 */
public final class Manifest {

  /** Its name in the folder of the results. */
  public static final String NAME = "batch.jsonl";

  private final Path file;

  public Manifest(Path folder) {
    this.file = folder.resolve(NAME);
  }

  /**
   * What is finished, by the name of the file; the last line of each counts.
   *
   * @throws IOException if it cannot be read
   */
  public Map<String, Finished> read() throws IOException {
    Map<String, Finished> finished = new LinkedHashMap<>();
    if (Files.exists(file)) {
      String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
      text.lines()
          .flatMap(line -> FinishedJson.read(line).stream())
          .forEach(each -> finished.put(each.outcome().file(), each));
    }
    return finished;
  }

  /**
   * Adds a file that is finished. May be called from any thread.
   *
   * @throws IOException if it cannot be written
   */
  public synchronized void add(Finished finished) throws IOException {
    // A line break first: what a killed run has left of a line is not to be added to.
    String text = "\n" + FinishedJson.line(finished) + "\n";
    Files.write(
        file,
        text.getBytes(StandardCharsets.UTF_8),
        StandardOpenOption.CREATE,
        StandardOpenOption.APPEND);
  }

  /**
   * Writes the whole anew, at once or not at all.
   *
   * @throws IOException if it cannot be written
   */
  public synchronized void write(Collection<Finished> all) throws IOException {
    Path part = file.resolveSibling("." + NAME + "." + ProcessHandle.current().pid() + ".part");
    String text =
        all.stream().map(each -> FinishedJson.line(each) + "\n").collect(Collectors.joining());
    try {
      Files.writeString(part, text);
      try {
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(part);
    }
  }
}

package counterset.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Compares texts with the files of a golden folder; a file that nothing is compared with is a fault
 * too.
 *
 * <p>After a wanted change, run the tests from the root of the project with {@code
 * -Dgolden.write=true}, which writes the files anew, and read what has changed.
 */
public final class Golden {

  private static final Path ROOT = Path.of("src", "test", "resources", "golden");

  private Golden() {}

  /**
   * Compares.
   *
   * @param texts by the name of the file without its ending
   */
  public static void check(String folder, String ending, Map<String, String> texts) {
    try {
      if (Boolean.getBoolean("golden.write")) {
        for (Map.Entry<String, String> text : texts.entrySet()) {
          Files.createDirectories(ROOT.resolve(folder));
          Files.writeString(ROOT.resolve(folder).resolve(text.getKey() + ending), text.getValue());
        }
      }
      assertThat(names(folder))
          .isEqualTo(new TreeSet<>(texts.keySet().stream().map(name -> name + ending).toList()));
      for (Map.Entry<String, String> text : texts.entrySet()) {
        Path file = ROOT.resolve(folder).resolve(text.getKey() + ending);
        List<String> lines = Files.readString(file).lines().toList();
        assertThat(text.getValue().lines().toList()).as(file.toString()).isEqualTo(lines);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<String> names(String folder) throws IOException {
    try (Stream<Path> files = Files.list(ROOT.resolve(folder))) {
      return new TreeSet<>(files.map(file -> file.getFileName().toString()).toList());
    }
  }
}

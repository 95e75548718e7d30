package counterset.typed;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.report.Golden;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Ten sessions, typed as ten coaches would; what each line was taken for stands in the golden. */
class TypedGoldenTest {

  private static final Path TYPED = Path.of("src", "test", "resources", "typed");

  /** The typed sessions by name. */
  static Map<String, String> texts() throws IOException {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.list(TYPED)) {
      for (Path file : files.toList()) {
        String name = file.getFileName().toString().replace(".txt", "");
        texts.put(name, Files.readString(file, StandardCharsets.UTF_8));
      }
    }
    return texts;
  }

  @Test
  void eachIsReadAsItsGoldenSays() throws IOException {
    Map<String, String> read = new TreeMap<>();
    texts().forEach((name, text) -> read.put(name, reading(name, text)));
    assertThat(read).hasSizeGreaterThanOrEqualTo(10);
    Golden.check("typed", ".txt", read);
  }

  private static String reading(String name, String text) {
    TypedReading reading = Texts.read(text);
    assertThat(reading.faults()).as(name).isEmpty();
    TypedSession typed = reading.session().orElseThrow();
    List<String> lines = new ArrayList<>();
    reading.lines().forEach(taken -> lines.add(taken.sentence()));
    lines.add("");
    lines.addAll(typed.readAs());
    lines.add("");
    typed
        .session()
        .supersets()
        .forEach(
            it ->
                lines.add(
                    it.number()
                        + ": "
                        + String.join(" ", it.exercises().stream().map(e -> e.id()).toList())));
    return String.join("\n", lines) + "\n";
  }

  /** Line ends, marks and spaces of other editors change nothing but the text that is quoted. */
  @Test
  void lineEndsDoNotMatter() throws IOException {
    texts()
        .forEach(
            (name, text) -> {
              String unix = text.replace("\r\n", "\n");
              String session = Texts.session(unix);
              assertThat(Texts.session(unix.replace("\n", "\r\n"))).as(name).isEqualTo(session);
              assertThat(Texts.session(unix.replace("\n", "\r"))).as(name).isEqualTo(session);
              assertThat(Texts.session("\ufeff" + unix)).as(name).isEqualTo(session);
              assertThat(Texts.session(unix.replace(' ', '\u00a0'))).as(name).isEqualTo(session);
            });
  }
}

package counterset.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsonFilesTest {

  @TempDir Path folder;

  @Test
  void readsWithAndWithoutByteOrderMark() throws IOException {
    assertThat(JsonFiles.read(file("{\"a\": 1}")).tree().get("a").intValue()).isEqualTo(1);
    assertThat(JsonFiles.read(file("\uFEFF[2]")).tree().get(0).intValue()).isEqualTo(2);
  }

  @Test
  void missingFileNamesItsNeighbour() throws IOException {
    Files.writeString(folder.resolve("lunch.json"), "{}");
    Violation violation = fault(folder.resolve("lunhc.json"));
    assertThat(violation.message()).isEqualTo("There is no such file. Maybe \"lunch.json\"?");
    assertThat(violation.line()).isEmpty();
  }

  @Test
  void missingFolder() {
    assertThat(fault(folder.resolve("none/a.json")).message())
        .contains("Its folder")
        .contains("does not exist either");
  }

  @Test
  void directory() {
    assertThat(fault(folder).message()).isEqualTo("This is a directory; name a file in it.");
  }

  @ParameterizedTest
  @CsvSource({"''", "'  \n '"})
  void empty(String text) throws IOException {
    assertThat(fault(file(text)).message()).startsWith("The file is empty");
  }

  @Test
  void tooLarge() throws IOException {
    Path file = folder.resolve("large.json");
    Files.write(file, new byte[JsonFiles.LARGEST + 1]);
    assertThat(fault(file).message())
        .isEqualTo(
            "The file (8388609 bytes) is larger than 8 MiB and was not read; is it the right one?");
  }

  @Test
  void notUtf8() throws IOException {
    Path file = folder.resolve("latin.json");
    Files.write(file, "\"caf\u00e9\"".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(fault(file).message())
        .isEqualTo("The file is not UTF-8 text (byte 5); save it as UTF-8.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{                     | 1 | ends too early",
        "{\"a\": 1,\\n}         | 2 | a comma too many",
        "[1,]                  | 1 | a comma too many",
        "{a: 1}                | 1 | double quotes",
        "{'a': 1}              | 1 | not in single ones",
        "{\"a\" 1}             | 1 | a colon is missing before (1)",
        "{\"a\": 1\\n \"b\": 2} | 2 | a comma or a closing bracket is missing",
        "// hello\\n{}         | 1 | JSON has no comments",
        "{\"a\": tru}          | 1 | the word (tru) is neither",
        "{\"a\": 01}           | 1 | must not begin with a zero",
        "{\"a\": \"x\\ny\"}    | 1 | must not run over a line break",
        "{\"a\": 1,\\n\"a\": 2} | 2 | The property (a) is written twice in one object",
        "{} {}                 | 1 | more text after the JSON value (column 4)",
        "{}\\nx                | 2 | more text after the JSON value",
        "{\"a\": NaN}          | 1 | not valid JSON at column",
        "]                     | 1 | a bracket closes nothing",
        "[1}                   | 1 | not the kind of bracket that was opened",
      })
  void malformed(String text, int line, String message) throws IOException {
    Violation violation = fault(file(text.replace("\\n", "\n")));
    assertThat(violation.message()).contains(message);
    assertThat(violation.line()).isEqualTo(OptionalInt.of(line));
    assertThat(violation.message()).doesNotContain("Source", "jackson", "Exception");
  }

  @Test
  void absurdNesting() throws IOException {
    assertThat(fault(file("[".repeat(100_000))).message())
        .startsWith("The value is nested deeper than 60 levels");
    assertThat(fault(file("{\"a\":".repeat(100_000))).message()).contains("nested deeper");
  }

  @Test
  void enormousNumber() throws IOException {
    assertThat(fault(file("1".repeat(5000))).message())
        .startsWith("This is not valid JSON at column");
  }

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("in.json"), text);
  }

  private static Violation fault(Path file) {
    InvalidInputException e =
        catchThrowableOfType(InvalidInputException.class, () -> JsonFiles.read(file));
    assertThat(e.violations()).hasSize(1);
    assertThat(e.violations().get(0).file()).isEqualTo(file.toString());
    return e.violations().get(0);
  }
}

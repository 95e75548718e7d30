package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are no problem and no plan: status 2, one line a fault with its place and remedy. */
class MalformedFilesTest {

  @TempDir Path folder;

  private Cli run(String command, String file, int faults) {
    Cli run = Cli.fixed(folder, command, file).isRefused(faults);
    assertThat(run.err().length()).as("length of %s", run.err()).isLessThan(400 * faults);
    assertThat(run.faults()).allMatch(line -> line.contains(file));
    assertThat(run.err()).as("words of a library").doesNotContain("CTRL-CHAR", "JsonReadFeature");
    return run;
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "check"})
  void missing(String command) {
    Cli.write(folder, "legs.json", "{}");
    assertThat(run(command, "legz.json", 1).err())
        .contains("legz.json: There is no such file.")
        .contains("legs.json");
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "check"})
  void directory(String command) throws IOException {
    Files.createDirectory(folder.resolve("week"));
    assertThat(run(command, "week", 1).err()).contains("directory; name a file in it.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "check"})
  void fiftyMegabytes(String command) throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(folder.resolve("big.json").toFile(), "rw")) {
      file.setLength(50_000_000);
    }
    assertThat(run(command, "big.json", 1).err()).contains("50000000 bytes");
  }

  @ParameterizedTest
  @ValueSource(strings = {"plan", "check"})
  void notUtf8(String command) throws IOException {
    byte[] bytes = {'{', '"', 'p', '"', ':', '\n', '"', (byte) 0xe9, '"', '}'};
    Files.write(folder.resolve("latin.json"), bytes);
    assertThat(run(command, "latin.json", 1).err()).contains("UTF-8");
  }

  static Stream<Arguments> texts() {
    return Stream.of(
        Arguments.of("", "The file is empty; it must hold one JSON value."),
        Arguments.of(" \n\t", "The file is empty; it must hold one JSON value."),
        Arguments.of("{\"problem\": 1,\n \"minutes\": }", ":2: This is not valid JSON at column"),
        Arguments.of("{\"problem\": 1", "the text ends too early"),
        Arguments.of("{'problem': 1}", "names and text stand in double quotes"),
        Arguments.of("{\"problem\": 1} {}", "There is more text after the JSON value"),
        Arguments.of("{\"plan\": 1, \"plan\": 1}", "The property (plan) is written twice"),
        Arguments.of("[".repeat(5000), "nested deeper than 60 levels"),
        Arguments.of("{\"plan\":".repeat(100) + "1" + "}".repeat(100), "nested deeper than 60"),
        Arguments.of("{\"problem\": NaN}", "the word (NaN) is neither text"),
        Arguments.of("{\"problem\": 01}", "a number must not begin with a zero"),
        Arguments.of("{\"plan\": " + "9".repeat(2000) + "}", "file.json:1"),
        Arguments.of("\u0000\u0000", "file.json:1: This is not valid JSON at column"));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void malformed(String text, String says) {
    Cli.write(folder, "file.json", text);
    for (String command : new String[] {"plan", "check"}) {
      assertThat(run(command, "file.json", 1).err()).contains(says);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[]                      | file.json:1",
        "null                    | file.json:1",
        "\"text\"                | file.json:1",
        "42                      | file.json:1",
        "{}                      | file.json:1",
        "{\"plan\": null}        | file.json:1",
        "{\"plan\": \"1\"}       | file.json:1 /plan: The plan (1) must be a whole number.",
        "{\"plan\": 1e400}       | file.json:1 /plan: ",
        "{\"plan\": 1.5}         | file.json:1 /plan: The plan (1.5) must be a whole number.",
      })
  void noPlan(String text, String says) {
    Cli.write(folder, "file.json", text);
    assertThat(run("check", "file.json", 1).err()).contains(says);
  }
}

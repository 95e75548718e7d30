package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.FixedCatalogue;
import counterset.json.JsonDocument;
import counterset.model.Catalogue;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.Supplier;

/**
 * What a command line did: its exit status, its results and its messages.
 *
 * @param out the results
 * @param err the messages
 */
record Cli(int status, String out, String err) {

  /** The ask of most tests. */
  static final String ASK = "20 min, lower body, dumbbells plus ankle weights, sore knees";

  /** Runs one command line as if typed in a folder, without a terminal. */
  static Cli run(Path folder, String... args) {
    return piped(folder, "", args);
  }

  /** The same with the fixed catalogue, for what would change with the one that is shipped. */
  static Cli fixed(Path folder, String... args) {
    return run(folder, "", () -> FixedCatalogue.CATALOGUE, args);
  }

  /** The same with a text piped in. */
  static Cli piped(Path folder, String text, String... args) {
    return run(folder, text, Catalogues::embedded, args);
  }

  private static Cli run(Path folder, String text, Supplier<Catalogue> catalogue, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Shell shell =
        new Shell(
            new PrintWriter(out),
            new PrintWriter(err),
            false,
            false,
            folder,
            new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
            Clock.systemDefaultZone(),
            catalogue);
    int status = Commands.run(shell, args);
    shell.out().flush();
    shell.err().flush();
    return new Cli(status, out.toString(), err.toString());
  }

  /** Writes a file for a command to read. */
  static Path write(Path folder, String file, String text) {
    try {
      return Files.writeString(folder.resolve(file), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The results as JSON; the file reader itself says where they are malformed. */
  JsonDocument json() {
    return JsonDocument.parse("the results", out);
  }

  /** The messages without the hints that follow a fault of the command line. */
  List<String> faults() {
    return err.lines()
        .filter(line -> !line.startsWith("Try: ") && !line.startsWith("Possible solutions: "))
        .filter(line -> !line.startsWith("Did you mean: "))
        .toList();
  }

  Cli succeeds() {
    assertThat(status).as("status; %s", this).isEqualTo(Exit.DONE);
    return speaksPlainly();
  }

  /** A command that cannot be done: no results, one line a fault. */
  Cli isRefused(int faults) {
    assertThat(status).as("status; %s", this).isEqualTo(Exit.BAD_INPUT);
    assertThat(out).as("results").isEmpty();
    assertThat(faults()).as("messages").hasSize(faults);
    return speaksPlainly();
  }

  /** Nothing of the machinery shows. */
  Cli speaksPlainly() {
    assertThat(out + err)
        .doesNotContain("Exception")
        .doesNotContain("at counterset")
        .doesNotContain("Internal error")
        .doesNotContain("\u001b");
    return this;
  }
}

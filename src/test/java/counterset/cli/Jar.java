package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The program as it is handed out, to be run as a process of its own. */
final class Jar {

  private static final Path FILE = Path.of("target", "counterset.jar").toAbsolutePath();
  private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
  private static final int PATIENCE_SECONDS = 300;

  /** What a process did. */
  record Result(int status, String out, String err) {

    Result succeeds() {
      assertThat(status).as(toString()).isZero();
      assertThat(out + err).doesNotContain("Exception", "\tat ", "WARNING", "SLF4J");
      return this;
    }
  }

  private final Path folder;
  private final ProcessBuilder builder = new ProcessBuilder();
  private final List<String> options = new ArrayList<>();

  private Jar(Path folder) {
    this.folder = folder;
    builder.directory(folder.toFile());
    builder
        .environment()
        .keySet()
        .removeAll(List.of("JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS", "NO_COLOR"));
    builder.redirectError(folder.resolve("err").toFile());
  }

  /** A process that works in a folder, where its messages also go. */
  static Jar in(Path folder) {
    return new Jar(folder);
  }

  /** An environment variable. */
  Jar with(String variable, String value) {
    builder.environment().put(variable, value);
    return this;
  }

  /** An option of the virtual machine. */
  Jar option(String option) {
    options.add(option);
    return this;
  }

  /** Starts it; the results wait in the pipe. */
  Process start(String... args) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(JAVA.toString());
    command.addAll(options);
    command.addAll(List.of("-jar", FILE.toString()));
    command.addAll(List.of(args));
    return builder.command(command).start();
  }

  /** Runs it to the end. */
  Result run(String... args) throws Exception {
    builder.redirectOutput(folder.resolve("out").toFile());
    Process process = start(args);
    process.getOutputStream().close();
    int status = end(process, PATIENCE_SECONDS);
    return new Result(status, read("out"), read("err"));
  }

  /** Waits for the end of a process and gives its status. */
  static int end(Process process, int seconds) throws InterruptedException {
    try {
      assertThat(process.waitFor(seconds, TimeUnit.SECONDS))
          .as("ends within %d s", seconds)
          .isTrue();
      return process.exitValue();
    } finally {
      process.destroyForcibly();
    }
  }

  /** The messages so far. */
  String messages() throws IOException {
    return read("err");
  }

  private String read(String file) throws IOException {
    return Files.readString(folder.resolve(file), StandardCharsets.UTF_8);
  }
}

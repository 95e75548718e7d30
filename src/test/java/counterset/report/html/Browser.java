package counterset.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Chromium, driven by the scripts in {@code src/test/browser} through Node.js. The packages they
 * need come from npm as the lock file names them.
 *
 * <p>Without Chromium, Node.js or npm the tests are skipped, unless the environment variable {@code
 * COUNTERSET_BROWSER} is {@code required}: then they fail.
 */
final class Browser {

  static final Path FOLDER = Path.of("target", "browser").toAbsolutePath();
  private static final Path SOURCE = Path.of("src", "test", "browser");
  private static final int PATIENCE_SECONDS = 300;
  private static boolean installed;

  private Browser() {}

  /** Makes scripts and packages ready; skips the test if something is not on this machine. */
  static synchronized void prepare() throws Exception {
    for (String program : List.of("chromium", "node", "npm")) {
      boolean there = find(program).isPresent();
      String message = program + " is not on the PATH; the browser tests need it.";
      if ("required".equals(System.getenv("COUNTERSET_BROWSER"))) {
        assertThat(there).as(message).isTrue();
      }
      assumeTrue(there, message);
    }
    if (!installed) {
      Files.createDirectories(FOLDER);
      try (Stream<Path> files = Files.list(SOURCE)) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          Files.copy(file, FOLDER.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
        }
      }
      run(List.of(find("npm").orElseThrow().toString(), "ci", "--no-audit", "--no-fund"));
      installed = true;
    }
  }

  /**
   * Runs a script, which fails if one of its checks does.
   *
   * @param script its name without ending
   * @return what it printed
   */
  static String check(String script, Path... files) throws Exception {
    prepare();
    List<String> command =
        new ArrayList<>(List.of(find("node").orElseThrow().toString(), script + ".mjs"));
    Arrays.stream(files).map(Path::toString).forEach(command::add);
    return run(command);
  }

  private static String run(List<String> command) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command).directory(FOLDER.toFile());
    builder.environment().put("CHROMIUM", find("chromium").orElseThrow().toString());
    Process process = builder.redirectErrorStream(true).start();
    process.getOutputStream().close();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    try {
      assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).as("ends").isTrue();
      assertThat(process.exitValue()).as(String.join(" ", command) + "\n" + out).isZero();
    } finally {
      process.destroyForcibly();
    }
    return out;
  }

  private static Optional<Path> find(String program) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .map(folder -> Path.of(folder, program))
        .filter(Files::isExecutable)
        .findFirst();
  }
}

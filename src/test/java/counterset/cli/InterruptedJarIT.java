package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ctrl-C while the packaged program is searching. */
class InterruptedJarIT {

  private static final Duration DEEP_IN_THE_SEARCH = Duration.ofSeconds(6);

  private static final String HOUR =
      """
      {"problem": 1, "minutes": 60, "targets": ["whole"],
       "equipment": [{"id": "dumbbell", "count": 2}, {"id": "mat"}]}
      """;

  @TempDir Path folder;

  @Test
  void interruptedItPrintsTheBestPlanSoFar() throws Exception {
    assumeFalse(isInterruptIgnored(), "interrupts are ignored by this process and its children");
    Jar jar = Jar.in(folder);
    Path out = folder.resolve("interrupted");
    Cli.write(folder, "hour.json", HOUR);
    Process process = startSearch(jar);
    Thread reader = new Thread(() -> copy(process, out));
    reader.start();
    assumeTrue(process.isAlive(), "the search ended before it could be interrupted");
    interrupt(process);
    int status = Jar.end(process, 10);
    reader.join(TimeUnit.SECONDS.toMillis(10));
    assertThat(jar.messages())
        .contains("Interrupted: this is the best plan found so far.")
        .doesNotContain("Exception", "\tat ");
    assertThat(status).isZero();
    assertThat(PackagedJarIT.supersets(Cli.read(out))).isEqualTo(28);
    assertThat(Cli.read(out)).contains("\nORDER\n", "\nSCORE  all rules kept,", "\nCAUTIONS\n");
    assertThat(Cli.read(out)).endsWith("\n").contains("practice come first.");
  }

  /** A short plan may be made by a second process, which must not outlive the first. */
  @Test
  void interruptedEarlyOrLateItLeavesNoHalfPlanAndNoProcess() throws Exception {
    assumeFalse(isInterruptIgnored(), "interrupts are ignored by this process and its children");
    for (int wait : new int[] {300, 900, 1800}) {
      Jar jar = Jar.in(folder);
      Path out = folder.resolve("after" + wait);
      Process process = jar.start("plan", Cli.ASK);
      Thread reader = new Thread(() -> copy(process, out));
      reader.start();
      Thread.sleep(wait);
      List<ProcessHandle> others = process.descendants().toList();
      interrupt(process);
      Jar.end(process, 20);
      reader.join(TimeUnit.SECONDS.toMillis(20));
      assertThat(others).noneMatch(ProcessHandle::isAlive);
      assertThat(jar.messages()).doesNotContain("Exception", "\tat ", "Internal error");
      if (!Cli.read(out).isEmpty()) {
        assertThat(Cli.read(out)).contains("\nCAUTIONS\n").contains("practice come first.");
      }
    }
  }

  private static Process startSearch(Jar jar) throws Exception {
    Process process = jar.start("plan", "hour.json", "--effort", "thorough");
    for (int i = 0; i < 1200 && process.isAlive() && !isDeepInTheSearch(process); i++) {
      Thread.sleep(100);
    }
    return process;
  }

  /** The first process may leave the search to a second. */
  private static boolean isDeepInTheSearch(Process process) {
    return Stream.concat(Stream.of(process.toHandle()), process.descendants())
        .flatMap(each -> each.info().totalCpuDuration().stream())
        .anyMatch(spent -> spent.compareTo(DEEP_IN_THE_SEARCH) > 0);
  }

  private static void interrupt(Process process) throws Exception {
    if (!process.isAlive()) {
      return;
    }
    try {
      Process kill = new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start();
      kill.waitFor();
    } catch (IOException e) {
      process.destroyForcibly();
      assumeTrue(false, "this system has no kill");
    }
  }

  private static void copy(Process process, Path file) {
    try {
      Files.copy(process.getInputStream(), file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whoever starts a process in the background may have told it to ignore interrupts. */
  private static boolean isInterruptIgnored() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (!Files.exists(status)) {
      return false;
    }
    try (Stream<String> lines = Files.lines(status)) {
      return lines
          .filter(line -> line.startsWith("SigIgn:"))
          .anyMatch(line -> (Long.parseUnsignedLong(line.substring(7).strip(), 16) & 2) != 0);
    }
  }
}

package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jar as it is handed out: what only a process of its own can show. */
class PackagedJarIT {

  @TempDir Path folder;

  static long supersets(String runSheet) {
    return runSheet.lines().filter(line -> line.contains(" SUPERSET ")).count();
  }

  @Test
  void theFirstAskOfACoachGivesEightSupersets() throws Exception {
    Jar.Result plan = Jar.in(folder).run("plan", Cli.ASK).succeeds();
    assertThat(supersets(plan.out())).isEqualTo(8);
    assertThat(plan.out()).contains("SCORE  all rules kept, all wishes met, ").endsWith("\n");
    assertThat(plan.err()).isEmpty();
  }

  @Test
  void versionAndHelp() throws Exception {
    assertThat(Jar.in(folder).run("--version").succeeds().out())
        .matches("counterset \\d+\\.\\d+\\.\\d+(-\\w+)?\n");
    assertThat(Jar.in(folder).run("--help").succeeds().out())
        .contains("Usage: counterset", "plan", "check", "catalogue", "schema");
    Jar.Result nothing = Jar.in(folder).run();
    assertThat(nothing.status()).isEqualTo(Exit.BAD_INPUT);
    assertThat(nothing.out()).isEmpty();
  }

  @Test
  void anotherFolderIsWhereItsFilesAre() throws Exception {
    Path other = Files.createDirectory(folder.resolve("other folder"));
    Cli.write(other, "p.json", "{\"problem\": 1, \"minutes\": 6, \"targets\": [\"calves\"]}");
    Jar.in(other).run("plan", "p.json", "--effort", "quick", "--write", "plan.json").succeeds();
    Jar.in(other).run("check", "plan.json").succeeds();
    assertThat(other.resolve("plan.json")).exists();
  }

  @Test
  void aPipeIsNeverColoured() throws Exception {
    for (String noColour : new String[] {"", "1"}) {
      Jar jar = Jar.in(folder).with("NO_COLOR", noColour).with("TERM", "xterm-256color");
      Process process = jar.start("plan", Cli.ASK, "--effort", "quick");
      String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(Jar.end(process, 60)).isZero();
      assertThat(out + jar.messages()).contains("ORDER").doesNotContain("\u001b", "\r");
    }
  }

  @Test
  void aReaderThatLeavesEarlyIsNoReasonForAStackTrace() throws Exception {
    String[][] commands = {
      {"plan", Cli.ASK, "--effort", "quick"}, {"catalogue", "gaps"}, {"catalogue", "list"}
    };
    for (String[] command : commands) {
      Jar jar = Jar.in(folder);
      Process process = jar.start(command);
      process.getInputStream().close();
      Jar.end(process, 120);
      assertThat(jar.messages()).doesNotContain("Exception", "\tat ", "Internal error");
    }
  }

  @Test
  void theSameBytesWhereverItRuns() throws Exception {
    String first = json(Jar.in(folder));
    assertThat(first).contains("\"feasible\": true");
    assertThat(json(Jar.in(folder))).as("again").isEqualTo(first);
    assertThat(json(Jar.in(folder).with("TZ", "Pacific/Kiritimati"))).as("TZ").isEqualTo(first);
    assertThat(json(Jar.in(folder).with("LC_ALL", "C"))).as("LC_ALL").isEqualTo(first);
    assertThat(json(Jar.in(folder).option("-Duser.language=tr").option("-Duser.country=TR")))
        .as("Turkish")
        .isEqualTo(first);
    for (int cores : new int[] {1, 2}) {
      assertThat(json(Jar.in(folder).option("-XX:ActiveProcessorCount=" + cores)))
          .as("%d cores", cores)
          .isEqualTo(first);
    }
    Path other = Files.createDirectory(folder.resolve("elsewhere"));
    assertThat(json(Jar.in(other))).as("another folder").isEqualTo(first);
  }

  @Test
  void theSameBytesOnABusyMachine() throws Exception {
    String idle = json(Jar.in(folder));
    Thread[] busy = new Thread[2];
    IntStream.range(0, busy.length).forEach(i -> busy[i] = new Thread(PackagedJarIT::spin));
    try {
      for (Thread thread : busy) {
        thread.start();
      }
      assertThat(json(Jar.in(folder))).isEqualTo(idle);
    } finally {
      for (Thread thread : busy) {
        thread.interrupt();
      }
    }
  }

  private static void spin() {
    while (!Thread.currentThread().isInterrupted()) {
      Thread.onSpinWait();
    }
  }

  private static String json(Jar jar) throws Exception {
    return jar.run("plan", Cli.ASK, "--effort", "quick", "--format", "json").succeeds().out();
  }
}

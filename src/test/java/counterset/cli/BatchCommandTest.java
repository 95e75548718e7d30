package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.batch.Manifest;
import counterset.json.JsonDocument;
import counterset.json.Schemas;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BatchCommandTest {

  private static final String CALVES =
      "{\"problem\": 1, \"minutes\": 6, \"targets\": [\"calves\"], \"seed\": %d}";

  private static final String WEEK =
      "{\"week\": 1, \"shared\": {\"minutes\": 6, \"targets\": [\"calves\"]},"
          + " \"sessions\": [{\"day\": \"monday\"}, {\"day\": \"thursday\"}]}";

  @TempDir Path folder;

  private Path roster(String name, int... numbers) throws IOException {
    Path roster = Files.createDirectories(folder.resolve(name));
    for (int number : numbers) {
      Cli.write(roster, "client-" + number + ".json", CALVES.replace("%d", "" + number));
    }
    return roster;
  }

  private Cli batch(String roster, String... more) {
    List<String> args = new ArrayList<>(List.of("batch", roster, "--effort", "quick"));
    args.addAll(List.of(more));
    return Cli.run(folder, args.toArray(String[]::new)).speaksPlainly();
  }

  private static Map<String, String> files(Path results) throws IOException {
    Map<String, String> texts = new TreeMap<>();
    try (Stream<Path> files = Files.list(results)) {
      files.forEach(file -> texts.put(file.getFileName().toString(), Cli.read(file)));
    }
    return texts;
  }

  private static List<String> rows(Cli batch) {
    return batch.out().lines().filter(line -> line.contains(".json")).toList();
  }

  @Test
  void everyProblemIsPlannedInTheOrderOfTheFolder() throws IOException {
    Path roster = roster("r", 10, 9, 1);
    Cli.write(roster, "week.json", WEEK);
    Cli.write(roster, "notes.txt", "not a problem");
    Cli batch = batch("r", "--kinds", "json,txt").succeeds();
    assertThat(rows(batch))
        .extracting(row -> row.split(" ")[0])
        .containsExactly("client-1.json", "client-9.json", "client-10.json", "week.json");
    assertThat(batch.out()).startsWith("File ").endsWith("\n4 files: 4 planned.\n");
    assertThat(batch.out().lines()).allMatch(line -> line.length() <= 100);
    assertThat(batch.err()).isEmpty();
    Map<String, String> texts = files(roster.resolve("plans"));
    assertThat(texts.keySet())
        .containsExactlyInAnyOrder(
            Manifest.NAME,
            "client-1.json",
            "client-1.txt",
            "client-9.json",
            "client-9.txt",
            "client-10.json",
            "client-10.txt",
            "week.json",
            "week.txt");
    assertThat(
            Cli.run(folder, "plan", "r/client-9.json", "--effort", "quick", "--format", "json")
                .out())
        .isEqualTo(texts.get("client-9.json"));
    assertThat(Schemas.validate(JsonDocument.parse("w", texts.get("week.json")), "week-plan"))
        .isEmpty();
  }

  @Test
  void theNumberOfJobsChangesNoByte() throws IOException {
    Path one = roster("one", 1, 2, 3, 4, 5);
    Path four = roster("four", 1, 2, 3, 4, 5);
    Cli first = batch("one", "--jobs", "1").succeeds();
    Cli second = batch("four", "--jobs", "4").succeeds();
    assertThat(second.out()).isEqualTo(first.out());
    assertThat(files(four.resolve("plans"))).isEqualTo(files(one.resolve("plans")));
  }

  @Test
  void whatIsFinishedAndUnchangedIsKept() throws IOException {
    Path plans = roster("r", 1, 2, 3).resolve("plans");
    String table = batch("r").succeeds().out();
    Map<String, String> before = files(plans);
    Cli.write(plans, "client-1.json", "marked");
    Files.delete(plans.resolve("client-3.json"));
    roster("r", 2);
    Cli.write(folder.resolve("r"), "client-2.json", CALVES.replace("%d", "7"));
    Cli again = batch("r").succeeds();
    assertThat(again.err()).isEqualTo("Kept from an earlier run, since nothing has changed: 1.\n");
    Map<String, String> after = files(plans);
    assertThat(after.get("client-1.json")).isEqualTo("marked");
    assertThat(after.get("client-2.json"))
        .contains("\"seed\": 7")
        .isNotEqualTo(before.get("client-2.json"));
    assertThat(after.get("client-3.json")).isEqualTo(before.get("client-3.json"));
    assertThat(rows(again).get(0)).isEqualTo(table.lines().skip(1).findFirst().orElseThrow());
    assertThat(rows(again).get(2)).isEqualTo(table.lines().skip(3).findFirst().orElseThrow());
  }

  @Test
  void anotherEffortOrSeedDoesAllAgain() throws IOException {
    Path plans = roster("r", 1).resolve("plans");
    batch("r").succeeds();
    for (List<String> other : List.of(List.of("--seed=5"), List.of("--effort=standard"))) {
      Cli.write(plans, "client-1.json", "marked");
      List<String> args = new ArrayList<>(List.of("batch", "r"));
      args.addAll(other);
      Cli.run(folder, args.toArray(String[]::new)).succeeds();
      assertThat(files(plans).get("client-1.json")).as(other.toString()).isNotEqualTo("marked");
    }
  }

  @Test
  void aBrokenFileIsToldAndPassedBy() throws IOException {
    Path roster = roster("r", 1, 3);
    Cli.write(
        roster, "client-2.json", "{\"problem\": 1,\n\"minuets\": 6, \"targets\": [\"calfs\"]}");
    Cli.write(
        roster, "client-4.json", "{\"problem\": 1, \"minutes\": 2, \"targets\": [\"calves\"]}");
    Cli batch = batch("r");
    assertThat(batch.status()).isEqualTo(Exit.BAD_INPUT);
    assertThat(batch.err())
        .contains(
            "client-2.json:2 /minuets: The property (minuets) is not known here. Maybe \"minutes\"?")
        .contains("client-2.json:2 /targets/0: ")
        .contains("client-4.json: No feasible session.");
    assertThat(rows(batch)).hasSize(4);
    assertThat(rows(batch).get(1)).contains(" broken ").endsWith("3 faults");
    assertThat(rows(batch).get(3)).contains(" infeasible ");
    assertThat(batch.out()).endsWith("\n4 files: 2 planned, 1 infeasible, 1 broken.\n");
    assertThat(files(roster.resolve("plans")))
        .containsOnlyKeys(Manifest.NAME, "client-1.json", "client-3.json");
    Files.delete(roster.resolve("client-2.json"));
    Cli again = batch("r");
    assertThat(again.status()).isEqualTo(Exit.INFEASIBLE);
    assertThat(again.err()).contains("Kept from an earlier run, since nothing has changed: 3.");
  }

  @Test
  void jsonOnStandardOutputIsNothingButJson() throws IOException {
    Path roster = roster("r", 1);
    Cli.write(roster, "x.json", "{");
    Cli batch = batch("r", "--format", "json", "--into", "out");
    assertThat(batch.json().at("/files/0/status").textValue()).isEqualTo("planned");
    assertThat(batch.json().at("/files/0/covered").intValue()).isEqualTo(1);
    assertThat(batch.json().at("/files/1/faults")).hasSize(1);
    assertThat(batch.json().at("/totals/broken").intValue()).isEqualTo(1);
    assertThat(files(folder.resolve("out"))).containsOnlyKeys(Manifest.NAME, "client-1.json");
  }

  @Test
  void refusals() throws IOException {
    roster("empty");
    roster("r", 1);
    assertThat(batch("nowhere").isRefused(1).err()).contains("nowhere: is no folder");
    assertThat(batch("empty").isRefused(1).err()).contains("no file that ends with .json");
    assertThat(batch("r", "--into", "r").isRefused(1).err()).contains("folder of the problems");
    assertThat(batch("r", "--kinds", "pdf", "--jobs", "0").isRefused(2).err())
        .contains("--kinds (pdf)", "--jobs (0)");
    assertThat(batch("r", "--into", "no/where").isRefused(1).err()).contains("cannot be made");
  }

  @Test
  void aKilledRunGoesOnWhereItWas() throws Exception {
    int[] numbers = IntStream.rangeClosed(1, 12).toArray();
    Path killed = roster("killed", numbers).resolve("plans");
    Path whole = roster("whole", numbers).resolve("plans");
    String table = batch("whole", "--jobs", "2").succeeds().out();
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty(
                    "surefire.test.class.path", System.getProperty("java.class.path")),
                "counterset.cli.Main",
                "batch",
                "killed",
                "--effort",
                "quick",
                "--jobs",
                "1")
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("output").toFile())
            .start();
    Path manifest = killed.resolve(Manifest.NAME);
    while (process.isAlive() && (!Files.exists(manifest) || Files.size(manifest) < 500)) {
      Thread.sleep(10);
    }
    process.destroyForcibly().waitFor();
    int finished = new Manifest(killed).read().size();
    assertThat(finished).as(Cli.read(folder.resolve("output"))).isPositive();
    Cli.write(killed, ".client-1.json." + process.pid() + ".part", "half");
    Cli again = batch("killed").succeeds();
    assertThat(again.err()).contains("nothing has changed: " + finished + ".");
    assertThat(again.out()).isEqualTo(table);
    assertThat(files(killed)).isEqualTo(files(whole));
  }

  @Test
  void onATerminalABarShowsHowFarItIsAndTheTableStaysClean() throws IOException {
    roster("r", 1, 2, 3);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Shell shell = new Shell(new PrintWriter(out), new PrintWriter(err), false, true, folder);
    assertThat(Commands.run(shell, "batch", "r", "--effort", "quick")).isEqualTo(Exit.DONE);
    shell.out().flush();
    shell.err().flush();
    assertThat(err.toString()).contains("\r[", "] 0 of 3", "] 1 of 3").doesNotContain("\n");
    Files.delete(folder.resolve("r/plans").resolve(Manifest.NAME));
    assertThat(out.toString()).isEqualTo(batch("r").out());
  }

  @Test
  void theBarTellsHowFarAndHowLong() {
    assertThat(BatchProgress.line(0, 0, 10, 0).strip())
        .isEqualTo("[..............................] 0 of 10");
    assertThat(BatchProgress.line(5, 0, 10, 20).strip())
        .isEqualTo("[###############...............] 5 of 10, about 20 s left");
    assertThat(BatchProgress.line(5, 3, 10, 60).strip()).endsWith("about 3 min left");
    assertThat(BatchProgress.line(1, 0, 1000, 60).strip()).endsWith("about 17 h left");
  }
}

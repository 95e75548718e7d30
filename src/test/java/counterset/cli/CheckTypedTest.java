package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.json.JsonFiles;
import counterset.report.Golden;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code check} reads what a coach types, judges it, and makes it better. */
class CheckTypedTest {

  private static final Path TYPED = Path.of("src", "test", "resources", "typed");
  private static final String TEXT =
      "20 min, upper body, dumbbells\n\nfloor press / bent-over row\n";

  @TempDir Path folder;

  private void copy(String name) throws IOException {
    Files.copy(TYPED.resolve(name + ".txt"), folder.resolve(name + ".txt"));
  }

  @Test
  void whatItPrintsIsHeldByGoldens() throws IOException {
    Map<String, String> printed = new TreeMap<>();
    for (String name : List.of("class", "no-ask", "terse", "tri-sets")) {
      copy(name);
      Cli run = Cli.fixed(folder, "check", name + ".txt").speaksPlainly();
      assertThat(run.err()).isEmpty();
      printed.put(name, run.out() + "status " + run.status() + "\n");
    }
    Golden.check("check", ".txt", printed);
  }

  @Test
  void asJson() throws IOException {
    copy("terse");
    Cli run = Cli.fixed(folder, "check", "terse.txt", "--format", "json");
    assertThat(run.status()).isEqualTo(Exit.INFEASIBLE);
    var json = run.json().tree();
    assertThat(json.at("/feasible").booleanValue()).isFalse();
    assertThat(json.at("/lines/1/exercise").textValue()).isEqualTo("dumbbell-romanian-deadlift");
    assertThat(json.at("/lines/1/line").intValue()).isEqualTo(2);
    assertThat(json.at("/readAs/0").textValue()).isEqualTo("20 minutes");
    assertThat(json.at("/bestChange/places").size()).isEqualTo(1);
    int change = json.at("/bestChange/score/hard").intValue() - json.at("/score/hard").intValue();
    int told = 0;
    for (var difference : json.at("/bestChange/differences")) {
      told +=
          difference.get("level").textValue().equals("hard")
              ? difference.get("points").intValue()
              : 0;
    }
    assertThat(change).isPositive().isEqualTo(told);
  }

  @Test
  void pipedIn() {
    Cli run = Cli.piped(folder, TEXT, "check", "-");
    assertThat(run.out())
        .contains("line 3, 1A: \"floor press\" taken for Dumbbell floor press (floor-press)");
    assertThat(Cli.piped(folder, "flying pig", "check", "-").isRefused(1).err())
        .startsWith("-, line 1, column 1: \"flying pig\" is no exercise");
  }

  @Test
  void whatItIsJudgedByMayStandBeside() throws IOException {
    Cli.write(folder, "s.txt", TEXT);
    Cli run =
        Cli.fixed(
            folder, "check", "s.txt", "--for", "10 min, upper body, dumbbells, sore shoulders");
    assertThat(run.out())
        .contains(
            "line 1: \"20 min, upper body, dumbbells\" taken for an ask, set aside: --for says what is asked")
        .contains("  10 minutes\n");
    assertThat(Cli.fixed(folder, "check", "s.txt", "--for", "10 min, uper bdy").isRefused(1).err())
        .startsWith("ask, column 9: ");
    String problem = Path.of("problems", "lunch-break-legs.json").toAbsolutePath().toString();
    assertThat(Cli.fixed(folder, "check", "s.txt", "--for", problem).out())
        .contains("targets: quadriceps");
  }

  @ParameterizedTest
  @CsvSource({"terse, 1", "terse, 3", "class, 2", "no-ask, 0", "rounds, 3", "kilos, 2"})
  void improvementChangesNoMoreThanAskedAndIsNeverWorse(String name, int changes)
      throws IOException {
    copy(name);
    int[] before =
        score(Cli.fixed(folder, "check", name + ".txt", "--format", "json").json().tree());
    Cli run =
        Cli.fixed(
                folder,
                "check",
                name + ".txt",
                "--improve",
                "--changes",
                "" + changes,
                "--effort",
                "quick",
                "--format",
                "json",
                "--write",
                "better.json")
            .speaksPlainly();
    var plan = run.json().tree();
    assertThat(java.util.Arrays.compare(score(plan), before))
        .as(run.err())
        .isGreaterThanOrEqualTo(0);
    assertThat(
            run.err()
                .lines()
                .filter(line -> line.matches("  \\d+[ABC]: .* (instead of|where nothing was).*"))
                .count())
        .isLessThanOrEqualTo(changes);
    assertThat(JsonFiles.read(folder.resolve("better.json")).tree()).isEqualTo(plan);
    int status = Cli.fixed(folder, "check", "better.json").status();
    assertThat(status).isEqualTo(run.status());
  }

  private static int[] score(com.fasterxml.jackson.databind.JsonNode plan) {
    return new int[] {
      plan.at("/score/hard").intValue(),
      plan.at("/score/medium").intValue(),
      plan.at("/score/soft").intValue()
    };
  }

  @Test
  void improvedWithoutLimitItKeepsEveryRule() throws IOException {
    copy("terse");
    Cli run = Cli.fixed(folder, "check", "terse.txt", "--improve", "--effort", "quick").succeeds();
    assertThat(run.out())
        .startsWith("20 MIN, LOWER BODY, DUMBBELLS PLUS ANKLE WEIGHTS, SORE KNEES\n");
    assertThat(run.err()).contains("places changed, +").contains(" instead of ");
  }

  @Test
  void plansAreImprovedToo() {
    Cli.write(folder, "plan.json", counterset.json.Json.pretty(GoodPlan.byHand()));
    Cli check = Cli.fixed(folder, "check", "plan.json").succeeds();
    assertThat(check.out())
        .startsWith("The session keeps every rule.\n")
        .contains("Best single change");
    Cli.fixed(folder, "check", "plan.json", "--improve", "--changes", "1").succeeds();
  }

  @Test
  void everyDayOfAWeek() {
    Cli.fixed(
            folder,
            "week",
            "lower Mon, upper Thu, 15 min, dumbbells",
            "--effort",
            "quick",
            "--write",
            "week.json")
        .succeeds();
    Cli run = Cli.fixed(folder, "check", "week.json").succeeds();
    assertThat(run.out())
        .startsWith("The week keeps every rule.\n")
        .contains("\nMONDAY\n")
        .contains("\nTHURSDAY\n");
    var json = Cli.fixed(folder, "check", "week.json", "--format", "json").succeeds().json().tree();
    assertThat(json.at("/sessions/1/day").textValue()).isEqualTo("Thursday");
    assertThat(json.at("/sessions/1/check/feasible").booleanValue()).isTrue();
    assertThat(Cli.fixed(folder, "check", "week.json", "--improve").isRefused(1).err())
        .contains("planned week");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " \n\t\r\n"})
  void emptyFile(String text) {
    Cli.write(folder, "s.txt", text);
    assertThat(Cli.fixed(folder, "check", "s.txt").isRefused(1).err())
        .contains("The file is empty.");
  }

  @Test
  void filesThatAreNoText() throws IOException {
    refuses("%PDF-1.7\n%\u00e2".getBytes(StandardCharsets.ISO_8859_1), "This is a PDF");
    refuses(new byte[] {'P', 'K', 3, 4, 20, 0}, "This is a packed document");
    refuses(new byte[] {'s', 'q', 0, 'u'}, "binary data");
    refuses(new byte[] {'s', 'q', (byte) 0xE9, 'u'}, "no plain text in UTF-8 (byte 3)");
    refuses("{\\rtf1 squat}".getBytes(StandardCharsets.UTF_8), "This is an RTF document");
    Files.createDirectory(folder.resolve("week"));
    assertThat(Cli.fixed(folder, "check", "week").isRefused(1).err()).contains("directory");
  }

  private void refuses(byte[] bytes, String why) throws IOException {
    Files.write(folder.resolve("s.txt"), bytes);
    assertThat(Cli.fixed(folder, "check", "s.txt").isRefused(1).err())
        .contains("s.txt: ")
        .contains(why);
  }

  @Test
  void utf16WithAMarkIsRead() throws IOException {
    Files.write(folder.resolve("s.txt"), ("\ufeff" + TEXT).getBytes(StandardCharsets.UTF_16LE));
    assertThat(Cli.fixed(folder, "check", "s.txt").out()).contains("(floor-press)");
  }

  @Test
  void jsonThatIsNoPlan() {
    Cli.write(folder, "s.txt", "{\"squat\": 1}");
    assertThat(Cli.fixed(folder, "check", "s.txt").isRefused(1).err())
        .contains("this is no plan file");
    Cli.write(folder, "s.json", "goblet squat");
    Cli.fixed(folder, "check", "s.json").isRefused(1);
  }

  @Test
  void nothingIsWrittenOnAnError() {
    Cli.write(folder, "s.txt", TEXT + "flying pig\n");
    Cli.write(folder, "better.json", "mine");
    Cli.fixed(folder, "check", "s.txt", "--improve", "--write", "better.json").isRefused(1);
    Cli.fixed(folder, "check", "s.txt", "--write", "better.json").isRefused(1);
    Cli.fixed(folder, "check", "s.txt", "--improve", "--changes", "-1", "--write", "better.pdf")
        .isRefused(2);
    assertThat(Cli.read(folder.resolve("better.json"))).isEqualTo("mine");
  }
}

package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.json.Json;
import counterset.json.JsonDocument;
import counterset.json.Schemas;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code log add}, {@code log list} and {@code log summary}. */
class LogCommandTest {

  private static final String LIFT = "dumbbell-romanian-deadlift";

  @TempDir Path folder;

  @BeforeEach
  void plan() {
    Cli.write(folder, "good.json", Json.pretty(GoodPlan.whole()));
  }

  private Cli add(String... more) {
    List<String> args = new ArrayList<>(List.of("log", "add", "good.json", "--log", "anna.jsonl"));
    args.addAll(List.of(more));
    return Cli.fixed(folder, args.toArray(String[]::new));
  }

  private Cli log(String command, String... more) {
    List<String> args = new ArrayList<>(List.of("log", command, "--log", "anna.jsonl"));
    args.addAll(List.of(more));
    return Cli.fixed(folder, args.toArray(String[]::new));
  }

  private List<String> lines() {
    return Cli.read(folder.resolve("anna.jsonl")).lines().toList();
  }

  @Test
  void aLineIsAnEntryByTheSchema() {
    add(
            "--rpe",
            "6",
            "--date",
            "2026-03-02",
            "--mass",
            "70.5",
            "--note",
            " \u00e9t\u00e9 ",
            "--load",
            LIFT + "=10kgx14,7.5kgx12",
            "--load",
            LIFT + "=7.5kgx9")
        .succeeds();
    assertThat(lines()).hasSize(1);
    JsonDocument line = JsonDocument.parse("line", lines().get(0));
    assertThat(Schemas.validate(line, "journal")).isEmpty();
    assertThat(line.at("/title").textValue()).isEqualTo("Good");
    assertThat(line.at("/minutes").intValue()).isEqualTo(20);
    assertThat(line.at("/note").textValue()).isEqualTo("\u00e9t\u00e9");
    assertThat(line.at("/loads")).hasSize(3);
    assertThat(line.at("/loads/2/set").intValue()).isEqualTo(3);
    assertThat(line.at("/loads/1/kg").doubleValue()).isEqualTo(7.5);
    assertThat(line.at("/exercises")).hasSize(12);
  }

  @Test
  void addPrintsWhatItAddedAndListPrintsAll() {
    Cli first = add("--rpe", "6", "--date", "2026-03-04", "--load", LIFT + "=10kgx14");
    assertThat(first.succeeds().out())
        .isEqualTo(
            "2026-03-04  Good   20 min   RPE 6   load 120\n"
                + "            Dumbbell Romanian deadlift   10 kg x 14\n");
    Cli second = add("--rpe", "4.5", "--date", "2026-03-02", "--minutes", "10");
    assertThat(second.succeeds().out())
        .isEqualTo("2026-03-02  Good   10 min   RPE 4.5   load 45\n");
    assertThat(log("list").succeeds().out()).isEqualTo(second.out() + first.out());
    assertThat(log("list", "--format", "json").json().at("/entries/0/sessionLoad").intValue())
        .isEqualTo(45);
  }

  @Test
  void jsonOfAnAddedEntryIsNothingButJson() {
    Cli added = add("--rpe", "6", "--date", "2026-03-02", "--format", "json").succeeds();
    assertThat(added.json().at("/sessionLoad").intValue()).isEqualTo(120);
    assertThat(added.json().at("/rpe").intValue()).isEqualTo(6);
  }

  /** The only place where the day of the machine counts. */
  @Test
  void withoutADateItIsToday() {
    Clock clock = Clock.fixed(Instant.parse("2026-07-14T23:30:00Z"), ZoneOffset.ofHours(2));
    StringWriter out = new StringWriter();
    PrintWriter writer = new PrintWriter(out);
    Shell shell = new Shell(writer, writer, false, false, folder, clock);
    Commands.run(shell, "log", "add", "good.json", "--log", "anna.jsonl", "--rpe", "6");
    writer.flush();
    assertThat(out.toString()).startsWith("2026-07-15  Good");
  }

  @Test
  void aPlanWrittenByHandIsEnough() {
    Cli.write(folder, "good.json", Json.pretty(GoodPlan.byHand()));
    add("--rpe", "6", "--date", "2026-03-02").succeeds();
  }

  @Test
  void allFaultsAtOnceAndNothingIsWritten() {
    Cli refused =
        Cli.fixed(
            folder,
            "log",
            "add",
            "good.json",
            "--rpe",
            "6.2",
            "--date",
            "2026-02-30",
            "--minutes",
            "0",
            "--mass",
            "heavy",
            "--note",
            " ",
            "--load",
            "dumbell-romanian-deadlift=10kgx14",
            "--load",
            LIFT + "=10x14,7,5kgx3",
            "--load",
            "x");
    assertThat(refused.isRefused(10).faults())
        .contains(
            "--log is missing. Name the file of the journal, such as --log anna.jsonl.",
            "--rpe (6.2) must be from 0 (rest) to 10 (maximal), in steps of 0.5.",
            "--date (2026-02-30) must be a date as year, month and day, such as 2026-03-02.",
            "--load: the exercise (dumbell-romanian-deadlift) is not in this plan. Maybe"
                + " \"dumbbell-romanian-deadlift\"?",
            "--load "
                + LIFT
                + ": the set (10x14) must be kilograms and repetitions, such as"
                + " 10kgx14 or 7.5kgx12.");
    assertThat(folder.resolve("anna.jsonl")).doesNotExist();
  }

  @Test
  void faultsOfThePlanAndOfTheJournalAreToldTogether() {
    Cli.write(folder, "good.json", "{\"plan\": 1}");
    Cli.write(folder, "anna.jsonl", "hello\n");
    Cli refused = add("--load", "goblet-sqat=10kgx14");
    assertThat(refused.isRefused(5).err())
        .contains("good.json:1 /problem: ", "good.json:1 /supersets: ", "anna.jsonl:1: ")
        .contains("(goblet-sqat) is not in the catalogue. Maybe \"goblet-squat\"?")
        .contains("--rpe is missing: how hard the whole session felt");
    assertThat(lines()).containsExactly("hello");
  }

  @Test
  void aSecondEntryOfTheDayIsToldOf() {
    add("--rpe", "6", "--date", "2026-03-02").succeeds();
    assertThat(add("--rpe", "6", "--date", "2026-03-02").succeeds().err())
        .contains("There was an entry of that day and title already; both count.");
    assertThat(lines()).hasSize(2);
  }

  @Test
  void aCutLineIsToldOfAndLeftOut() throws Exception {
    add("--rpe", "6", "--date", "2026-03-02").succeeds();
    Path file = folder.resolve("anna.jsonl");
    Files.writeString(file, Cli.read(file) + lines().get(0).substring(0, 77));
    String told = "anna.jsonl:2: The line was cut short and is left out.\n";
    assertThat(log("list").succeeds().err()).isEqualTo(told);
    assertThat(add("--rpe", "7", "--date", "2026-03-03").succeeds().err()).isEqualTo(told);
    assertThat(log("summary").succeeds().err()).isEqualTo(told);
    assertThat(log("list", "--format", "json").json().at("/entries")).hasSize(2);
  }

  @Test
  void summaryEndsWithTheLastEntryUnlessADateIsNamed() {
    add("--rpe", "6", "--date", "2026-03-02").succeeds();
    add("--rpe", "5", "--date", "2026-03-04").succeeds();
    Cli own = log("summary", "--format", "json").succeeds();
    assertThat(own.json().at("/weeks")).hasSize(4);
    assertThat(own.json().at("/weeks/3/last").textValue()).isEqualTo("2026-03-04");
    assertThat(own.json().at("/weeks/3/load").intValue()).isEqualTo(220);
    Cli named =
        log("summary", "--date", "2026-03-10", "--weeks", "1", "--mass", "70", "--format", "json");
    assertThat(named.succeeds().json().at("/weeks")).hasSize(1);
    assertThat(named.json().at("/weeks/0/load").intValue()).isEqualTo(100);
    assertThat(named.json().at("/energy/sessionsWithMass").intValue()).isEqualTo(1);
    assertThat(own.json().at("/energy").has("kcal")).isFalse();
    assertThat(log("summary").out())
        .contains("no kcal without a body mass, name it with --mass KG");
  }

  @Test
  void refusals() {
    assertThat(log("list").isRefused(1).err()).contains("There is no such file.");
    assertThat(Cli.fixed(folder, "log", "list").isRefused(1).err()).startsWith("--log is missing.");
    assertThat(Cli.fixed(folder, "log").isRefused(1).err()).contains("Say what to do. Maybe: ");
    Cli.write(folder, "anna.jsonl", "");
    assertThat(log("summary").isRefused(1).err()).contains("no entry yet to sum up");
    assertThat(log("list").succeeds().err()).contains("There is no entry yet.");
    log("summary", "--weeks", "0", "--date", "x", "--mass", "0").isRefused(3);
    assertThat(log("summary", "--date", "+12026-01-01").isRefused(1).err()).contains("--date (+1");
  }

  @Test
  void aJournalInAFolderThatIsNotThere() {
    Cli refused =
        Cli.fixed(folder, "log", "add", "good.json", "--log", "none/a.jsonl", "--rpe", "6");
    assertThat(refused.isRefused(1).err())
        .endsWith(
            "The journal cannot be written (its folder does not exist). Maybe choose another"
                + " folder.\n");
  }
}

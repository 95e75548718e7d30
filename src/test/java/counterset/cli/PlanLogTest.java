package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import counterset.json.Schemas;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code plan --log}: freshness and load advice. */
class PlanLogTest {

  private static final String ASK = "8 min, quadriceps, hamstrings, dumbbells 6, 10 and 12 kg";

  @TempDir Path folder;

  @BeforeEach
  void logTwice() {
    plan("--write", "plan.json");
    String lift = lift();
    for (String date : List.of("2026-03-02", "2026-03-04")) {
      Cli.fixed(
              folder,
              "log",
              "add",
              "plan.json",
              "--log",
              "anna.jsonl",
              "--rpe",
              "6",
              "--date",
              date,
              "--load",
              lift + "=10kgx14")
          .succeeds();
    }
  }

  private Cli plan(String... more) {
    List<String> args = new ArrayList<>(List.of("plan", ASK, "--effort", "quick"));
    args.addAll(List.of(more));
    return Cli.fixed(folder, args.toArray(String[]::new)).succeeds();
  }

  /** The first exercise of the plan that takes a dumbbell. */
  /** One that leaves room for another in its superset. */
  private String lift() {
    return exercises(folder.resolve("plan.json")).stream()
        .filter(id -> !GoodPlan.CATALOGUE.exercises().get(id).isUnilateral())
        .filter(
            id ->
                GoodPlan.CATALOGUE.exercises().get(id).needs().stream()
                    .anyMatch(need -> need.equipment().equals("dumbbell")))
        .findFirst()
        .orElseThrow();
  }

  private static List<String> exercises(Path plan) {
    return exercises(counterset.json.JsonFiles.read(plan).at("/supersets"));
  }

  private static List<String> exercises(JsonNode supersets) {
    List<String> ids = new ArrayList<>();
    supersets.forEach(s -> s.get("exercises").forEach(id -> ids.add(id.textValue())));
    return ids.stream().distinct().toList();
  }

  @Test
  void whatWasDoneIsNotDoneAgainAtOnce() {
    Cli fresh = plan("--log", "anna.jsonl", "--format", "json");
    assertThat(fresh.json().at("/problem/recent")).hasSize(2);
    assertThat(fresh.json().at("/problem/recent/1/date").textValue()).isEqualTo("2026-03-04");
    Set<String> again = new HashSet<>(exercises(fresh.json().at("/supersets")));
    again.retainAll(exercises(folder.resolve("plan.json")));
    assertThat(again).isEmpty();
  }

  @Test
  void afterFourWeeksAllIsForgotten() {
    Cli late = plan("--log", "anna.jsonl", "--date", "2026-06-01", "--format", "json");
    assertThat(late.json().at("/problem/recent")).isEmpty();
    assertThat(late.json().at("/problem/date").textValue()).isEqualTo("2026-06-01");
    assertThat(exercises(late.json().at("/supersets")))
        .isEqualTo(exercises(folder.resolve("plan.json")));
    assertThat(late.out()).contains("89 days ago");
  }

  @Test
  void whatComesAfterTheDayIsLeftOutAndTold() {
    Cli early = plan("--log", "anna.jsonl", "--date", "2026-03-03", "--format", "json");
    assertThat(early.json().at("/problem/recent")).hasSize(1);
    assertThat(early.err()).contains("anna.jsonl: entries after 2026-03-03 are left out: 1.");
  }

  @Test
  void loadAdviceIsInTextJsonAndFiles() {
    String lift = lift();
    String say = "10 kg last time for 14: try 12 kg next, for about 6 to 9 repetitions";
    String[] keep = {"--log", "anna.jsonl", "--write", "new.txt", "--write", "new.json"};
    Cli.write(
        folder,
        "keep.json",
        "{\"problem\": 1, \"minutes\": 6, \"targets\": [\"quadriceps\", \"hamstrings\"],"
            + " \"include\": [\""
            + lift
            + "\"],"
            + " \"equipment\": [{\"id\": \"dumbbell\", \"count\": 2, \"kg\": [10, 12]}]}");
    List<String> args = new ArrayList<>(List.of("plan", "keep.json", "--effort", "quick"));
    args.addAll(List.of(keep));
    Cli text = Cli.fixed(folder, args.toArray(String[]::new)).succeeds();
    String name = GoodPlan.CATALOGUE.exercises().get(lift).name();
    assertThat(text.out().replaceAll("\\s+", " ")).contains(name + ": " + say);
    assertThat(Cli.read(folder.resolve("new.txt"))).isEqualTo(text.out());
    args.addAll(List.of("--format", "json"));
    Cli json = Cli.fixed(folder, args.toArray(String[]::new)).succeeds();
    assertThat(Cli.read(folder.resolve("new.json"))).isEqualTo(json.out());
    assertThat(Schemas.validate(json.json(), "plan")).isEmpty();
    JsonNode advice = null;
    for (JsonNode load : json.json().at("/loads")) {
      advice = load.get("exercise").textValue().equals(lift) ? load : advice;
    }
    assertThat(advice).isNotNull();
    assertThat(advice.get("step").textValue()).isEqualTo("up");
    assertThat(advice.get("kg").intValue()).isEqualTo(12);
    assertThat(advice.get("say").textValue()).startsWith(say);
    assertThat(Cli.fixed(folder, "check", "new.json").succeeds().out())
        .doesNotContain("The file says something else");
  }

  @Test
  void withoutALogNothingChanges() {
    Cli plan = plan("--format", "json");
    assertThat(plan.json().tree().has("loads")).isFalse();
    assertThat(plan.json().at("/problem").has("date")).isFalse();
    assertThat(plan("--log", "anna.jsonl").out()).isEqualTo(plan("--log", "anna.jsonl").out());
  }

  @Test
  void refusals() {
    assertThat(Cli.fixed(folder, "plan", ASK, "--log", "ana.jsonl").isRefused(1).err())
        .contains("There is no such file. Maybe \"anna.jsonl\"?");
    assertThat(
            Cli.fixed(folder, "plan", ASK, "--date", "2.3.2026", "--write", "x.y")
                .isRefused(2)
                .err())
        .startsWith("--date (2.3.2026) must be a date");
    Cli.write(
        folder,
        "p.json",
        "{\"problem\": 1, \"minutes\": 6, \"targets\": [\"calves\"],"
            + " \"recent\": [{\"date\": \"2026-03-04\", \"exercises\": []}]}");
    assertThat(Cli.fixed(folder, "plan", "p.json", "--date", "2026-03-03").isRefused(1).err())
        .contains("--date (2026-03-03) is before a session that the problem has in its recent");
  }
}

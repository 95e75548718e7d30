package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import counterset.json.JsonDocument;
import counterset.json.Schemas;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareCommandTest {

  private static final String ASK = "10 min, quads and hamstrings, dumbbells";

  @TempDir Path folder;

  private Cli compare(String... args) {
    List<String> all = new ArrayList<>(List.of("compare", "--effort", "quick"));
    all.addAll(List.of(args));
    return Cli.fixed(folder, all.toArray(String[]::new)).speaksPlainly();
  }

  private JsonNode json(String... args) {
    List<String> all = new ArrayList<>(List.of("--format", "json"));
    all.addAll(List.of(args));
    return compare(all.toArray(String[]::new)).succeeds().json().tree();
  }

  private static List<String> texts(JsonNode list, String field) {
    return StreamSupport.stream(list.spliterator(), false)
        .map(it -> it.get(field).asText())
        .toList();
  }

  @Test
  void aGridHasAllPairsAndTheLastAxisChangesFirst() {
    JsonNode json =
        json(ASK, "--vary", "minutes=8,10", "--vary", "equipment=dumbbells;dumbbells,mat;none");
    assertThat(texts(json.get("options"), "label"))
        .containsExactly(
            "8 min, dumbbells",
            "8 min, dumbbells, mat",
            "8 min, no equipment",
            "10 min, dumbbells",
            "10 min, dumbbells, mat",
            "10 min, no equipment");
    assertThat(texts(json.get("options"), "number")).containsExactly("1", "2", "3", "4", "5", "6");
    assertThat(json.get("title").textValue()).isEqualTo(ASK + ": 6 sessions side by side");
    assertThat(json.get("sameProblem").booleanValue()).isFalse();
    assertThat(json.get("pointsPerSuperset").booleanValue()).isTrue();
    assertThat(json.get("shared")).hasSize(15);
  }

  /** The warm-up of an ask goes by its minutes, so both must come to the same session. */
  @Test
  void anOptionIsThePlanOfTheAskThatSaysTheSame() {
    JsonNode json = json(ASK, "--vary", "minutes=8,20");
    for (int i = 0; i < 2; i++) {
      String ask = ASK.replace("10 min", i == 0 ? "8 min" : "20 min");
      JsonNode plan =
          Cli.fixed(folder, "plan", ask, "--effort", "quick", "--format", "json").json().tree();
      JsonNode option = json.get("options").get(i);
      assertThat(option.at("/figures/soft")).isEqualTo(plan.at("/score/soft"));
      assertThat(option.at("/figures/seconds")).isEqualTo(plan.at("/totals/seconds"));
      assertThat(option.at("/figures/itemsHandled")).isEqualTo(plan.at("/totals/itemsHandled"));
      assertThat(option.at("/figures/loadedPositions"))
          .isEqualTo(plan.at("/totals/loadedPositions"));
      assertThat(texts(option.get("supersets"), "exercises"))
          .isEqualTo(texts(plan.get("supersets"), "exercises"));
      for (JsonNode row : json.get("constraints")) {
        for (JsonNode line : plan.at("/score/constraints")) {
          if (line.get("id").equals(row.get("id"))) {
            assertThat(row.get("points").get(i)).isEqualTo(line.get("score"));
          }
        }
      }
    }
  }

  @Test
  void theSameRequestGivesTheSameBytes() {
    String[] args = {ASK, "--vary", "seed=1,2,3", "--vary", "level=1,2"};
    assertThat(compare(args).out()).isEqualTo(compare(args).out());
  }

  @Test
  void theTableSaysWhatTheJsonSays() {
    JsonNode json = json(ASK, "--vary", "minutes=8,10");
    Cli text = compare(ASK, "--vary", "minutes=8,10").succeeds();
    for (int i = 0; i < 2; i++) {
      String soft = json.at("/options/" + i + "/figures/soft").asText();
      assertThat(text.out()).containsPattern("Points in all.*[ +]" + soft);
    }
    json.get("verdict")
        .forEach(
            line ->
                assertThat(text.out().replaceAll("\\s+", " "))
                    .contains(line.textValue().replaceAll("\\s+", " ")));
    assertThat(text.out())
        .contains("Read as: ", "Varied: minutes: 8 min; 10 min\n", "\nTRADE-OFF  points against");
    assertThat(text.out().lines()).allMatch(line -> line.length() <= 100);
    assertThat(text.err()).isEmpty();
  }

  @Test
  void plansProblemsAndAsksStandSideBySide() {
    Cli.write(folder, "plan.json", Json.pretty(GoodPlan.byHand()));
    Cli.write(folder, "calves.json", "{\"problem\": 1, \"minutes\": 6, \"targets\": [\"calves\"]}");
    JsonNode json = json("plan.json", "calves.json", "6 min, calves");
    assertThat(texts(json.get("options"), "label"))
        .containsExactly("plan.json", "calves.json", "6 min, calves");
    JsonNode check = Cli.fixed(folder, "check", "plan.json", "--format", "json").json().tree();
    assertThat(json.at("/options/0/figures/soft")).isEqualTo(check.at("/score/soft"));
    assertThat(json.at("/options/0/solver/effort").textValue()).isEqualTo("none");
    assertThat(json.at("/options/1/solver/effort").textValue()).isEqualTo("quick");
  }

  @Test
  void threeOptionsDifferInHalfOfTheirExercises() throws IOException {
    JsonNode json = json("10 min, lower body, dumbbells", "--options", "3", "--plans", "out");
    assertThat(json.get("options")).hasSize(3);
    assertThat(json.get("sameProblem").booleanValue()).isTrue();
    assertThat(texts(json.get("options"), "label"))
        .doesNotHaveDuplicates()
        .allMatch(label -> label.startsWith("with "));
    for (JsonNode pair : json.get("shared")) {
      int least = Math.min(pair.get("ofOne").intValue(), pair.get("ofOther").intValue());
      assertThat(2 * pair.get("exercises").intValue()).isLessThanOrEqualTo(least);
    }
    for (int option = 1; option <= 3; option++) {
      assertThat(folder.resolve("out/option-" + option + ".txt")).isNotEmptyFile();
      Cli check = Cli.fixed(folder, "check", "out/option-" + option + ".json", "--format", "json");
      assertThat(check.succeeds().json().tree().at("/score/soft"))
          .isEqualTo(json.at("/options/" + (option - 1) + "/figures/soft"));
    }
    Cli again = compare("out/option-1.json", "out/option-2.json").succeeds();
    assertThat(again.out()).contains("Option 1 (option-1.json): ", "\nOPTION 2  option-2.json\n");
    assertThat(again.err()).isEmpty();
  }

  @Test
  void fewerOptionsThanAskedForAreSaidToBe() {
    Cli compare = compare("6 min, calves, sore ankles", "--options", "9");
    assertThat(compare.err()).startsWith("Only ").contains(" of 9 plans");
    assertThat(compare.status()).isEqualTo(Exit.DONE);
  }

  @Test
  void oneThatCannotBeLedIsAColumnWithItsReason() {
    Cli compare = compare(ASK, "--vary", "minutes=2,10", "--format", "json").succeeds();
    JsonNode json = compare.json().tree();
    assertThat(Schemas.validate(compare.json(), "comparison")).isEmpty();
    assertThat(json.at("/options/0/feasible").booleanValue()).isFalse();
    assertThat(json.at("/options/0/reasons/0").textValue()).contains("room for no superset");
    assertThat(json.at("/options/1/feasible").booleanValue()).isTrue();
    assertThat(json.at("/tradeOffs/0/points")).hasSize(1);
    assertThat(json.get("ranked").toString()).isEqualTo("[2,1]");
    assertThat(compare(ASK, "--vary", "minutes=2,10").succeeds().out())
        .contains("OPTION 1 CANNOT BE LED\n", "Option 2 (10 min) is the only one that can be led.")
        .containsPattern("Can be led +no +yes\n");
  }

  @Test
  void noneThatCanBeLedIsToldByTheStatus() {
    Cli compare = compare(ASK, "--vary", "minutes=1,2", "--plans", "out");
    assertThat(compare.status()).isEqualTo(Exit.INFEASIBLE);
    assertThat(compare.out()).contains("None of these can be led.");
    assertThat(compare.err()).contains("plan says what would free");
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void filesSayTheSameAndAppearTogether() throws IOException {
    Cli compare =
        compare(
            ASK,
            "--vary",
            "minutes=8,10",
            "--write",
            "c.txt",
            "--write",
            "c.json",
            "--write",
            "c.html");
    String text = Cli.read(folder.resolve("c.txt"));
    assertThat(compare.succeeds().out()).endsWith(text);
    JsonDocument json = JsonDocument.parse("c.json", Cli.read(folder.resolve("c.json")));
    assertThat(Schemas.validate(json, "comparison")).isEmpty();
    assertThat(Cli.read(folder.resolve("c.html"))).startsWith("<!DOCTYPE html>");
    Cli refused =
        compare(ASK, "--vary", "minutes=8,10", "--write", "d.txt", "--write", "no/where.json");
    assertThat(refused.isRefused(1).err()).contains("does not exist");
    assertThat(folder.resolve("d.txt")).doesNotExist();
  }

  @Test
  void aPlanThatSaysOtherwiseThanItComesToIsTold() {
    ObjectNode plan = GoodPlan.whole();
    ((ObjectNode) plan.get("score")).put("soft", 999);
    Cli.write(folder, "old.json", Json.pretty(plan));
    Cli.write(folder, "new.json", Json.pretty(GoodPlan.whole()));
    Cli compare = compare("old.json", "new.json").succeeds();
    assertThat(compare.out())
        .startsWith("old.json: the file says otherwise")
        .contains("as good as option 2", "counterset check old.json");
  }

  @Test
  void allFaultsOfAllInputsAreToldAtOnce() {
    ObjectNode plan = GoodPlan.whole();
    GoodPlan.put(plan, "1A", "goblin-squat");
    GoodPlan.put(plan, "3B", "moon-walk");
    Cli.write(folder, "bad.json", Json.pretty(plan));
    Cli.write(folder, "week.json", "{\"week\": 1}");
    Cli compare = compare("bad.json", "gone.json", "20 min, lgs", "week.json", "--write", "x.pdf");
    assertThat(compare.isRefused(6).err())
        .contains("(goblin-squat)", "(moon-walk)", "/supersets/0/exercises/0")
        .contains("gone.json: There is no such file.")
        .contains("ask 3, column 9 (lgs): ")
        .contains("week.json: This is a week")
        .contains("--write (x.pdf)");
    Cli vary =
        compare(
            "20 min, lgs",
            "--vary",
            "minutes=fifteen,15,15",
            "--vary",
            "minuets=3",
            "--options",
            "12");
    assertThat(vary.isRefused(6).err())
        .contains("--vary and --options do not go together")
        .contains("--options (12) must be from 2 to 9.")
        .contains("ask, column 9 (lgs): ")
        .contains("--vary minutes (fifteen): ")
        .contains("--vary minutes (15): This value comes twice.")
        .contains("--vary (minuets) is no axis. Maybe one of minutes, equipment, limitations,");
  }

  @Test
  void refusals() {
    Cli.write(folder, "plan.json", Json.pretty(GoodPlan.whole()));
    assertThat(compare(ASK).isRefused(1).err()).contains("nothing to compare");
    assertThat(compare(ASK, ASK, "--vary", "level=1,2").isRefused(1).err()).contains("in quotes");
    assertThat(compare(ASK, "--vary", "level=1").isRefused(1).err()).contains("makes 1 session,");
    assertThat(compare(ASK, "--vary", "level").isRefused(1).err()).contains("has no values");
    assertThat(compare(ASK, "--vary", "level=1", "--vary", "level=2").isRefused(1).err())
        .contains("comes twice");
    assertThat(
            compare(ASK, "--vary", "minutes=5,6,7,8,9,10,11", "--vary", "seed=1,2,3,4,5,6")
                .isRefused(1)
                .err())
        .contains("makes 42 sessions, and 2 to 36 are compared");
    assertThat(
            compare(ASK, "--vary", "level=1,2", "--vary", "seed=1,2", "--vary", "rounds=1,2")
                .isRefused(1)
                .err())
        .contains("one axis or two");
    assertThat(compare(ASK, "--vary", "seed=1,2", "--seed", "3").isRefused(1).err())
        .contains("contradicts");
    assertThat(compare("plan.json", "--options", "2").isRefused(1).err()).contains("is a plan");
    assertThat(
            compare(ASK + ", keep 1B goblet squat", "--vary", "supersets=supersets,straight sets")
                .isRefused(1)
                .err())
        .contains("--vary (straight sets): 1B is kept");
    assertThat(
            compare(ASK + ", straight sets", "--vary", "pairing=opposing,free").isRefused(2).err())
        .contains("--vary (opposing): Straight sets have no pairing");
  }

  @Test
  void aProblemFileIsVariedToo() {
    Cli.write(
        folder,
        "p.json",
        "{\"problem\": 1, \"title\": \"Own\", \"minutes\": 8, \"targets\": [\"calves\"],"
            + " \"clock\": {\"warmUp\": 30}}");
    JsonNode json = json("p.json", "--vary", "minutes=6,8");
    assertThat(json.get("title").textValue()).startsWith("Own: 2 sessions");
    assertThat(json.at("/options/0/figures/minutes").intValue()).isEqualTo(6);
    assertThat(Files.exists(folder.resolve("p.json"))).isTrue();
  }
}

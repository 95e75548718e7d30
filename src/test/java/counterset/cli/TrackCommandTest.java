package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import counterset.json.JsonDocument;
import counterset.json.Schemas;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A class with tracks: planned, given track by track, and checked. */
class TrackCommandTest {

  private static final String ASK =
      "9 min, quadriceps, hamstrings, gluteus maximus, dumbbells,"
          + " class with sore knees, no floor plus sore wrists";

  @TempDir static Path folder;

  private static String text;

  private static Cli plan(String... more) {
    String[] args = new String[more.length + 4];
    System.arraycopy(new String[] {"plan", ASK, "--effort", "quick"}, 0, args, 0, 4);
    System.arraycopy(more, 0, args, 4, more.length);
    return Cli.fixed(folder, args);
  }

  @BeforeAll
  static void planOnce() {
    text = plan("--format", "json").succeeds().out();
  }

  private static ObjectNode whole() {
    return (ObjectNode) JsonDocument.parse("plan", text).tree();
  }

  @Test
  void theRunSheetShowsTheModifications() {
    Cli plan = plan().succeeds();
    assertThat(plan.out())
        .contains(
            "Read as: class: a modification for sore knees; one for no floor plus sore wrists")
        .contains("\nTracks       sore knees (")
        .contains("  - For sore wrists: ");
    assertThat(Schemas.validate(JsonDocument.parse("plan", text), "plan")).isEmpty();
  }

  @Test
  void aTrackIsASessionOfItsOwn() {
    Cli own = plan("--track", "sore-knees", "--format", "json", "--write", "own.json").succeeds();
    assertThat(own.json().at("/problem/limitations").toString()).isEqualTo("[\"sore-knees\"]");
    assertThat(own.json().at("/cautions").toString()).contains("Sore knees: ");
    JsonNode track = whole().at("/tracks/0");
    for (String same : new String[] {"score", "coverage", "changeovers", "equipmentList"}) {
      assertThat(own.json().at("/" + same)).isEqualTo(track.get(same));
    }
    assertThat(Cli.read(folder.resolve("own.json"))).isEqualTo(own.out());
    assertThat(Cli.fixed(folder, "check", "own.json").status()).isEqualTo(Exit.DONE);
    assertThat(plan("--track", "sore-wrists+no-floor").succeeds().out())
        .contains("\nLimitations  No floor and Sore wrists\n", "Sore wrists: ");
  }

  @Test
  void anUnknownTrackIsRefusedWithTheKnownOnes() {
    assertThat(plan("--track", "sore-kneez").isRefused(1).err())
        .contains(
            "--track (sore-kneez) is not known. Maybe \"sore-knees\"? The tracks: sore-knees, ");
    Cli none = Cli.fixed(folder, "plan", Cli.ASK, "--track", "sore-knees").isRefused(1);
    assertThat(none.err()).contains("This session has no tracks.");
  }

  @Test
  void checkAgreesWithPlan() {
    Cli check = PlanEdit.check(folder, whole(), "text").succeeds();
    assertThat(check.out())
        .startsWith("The session keeps every rule.\n")
        .doesNotContain("The file says something else");
  }

  static Stream<PlanEdit> edits() {
    return Stream.of(
        PlanEdit.of(
            "no modification",
            Exit.INFEASIBLE,
            plan -> modified(plan).forEach(it -> ((ObjectNode) it).remove("modifications")),
            ", for sore knees: ",
            " goes against sore knees (",
            "and no modification is beside it",
            "Show another exercise beside it, or swap it."),
        PlanEdit.of(
            "a modification that does not suit",
            Exit.INFEASIBLE,
            plan -> everyModification(plan, "exercise", "goblet-squat"),
            ", for sore knees: Goblet squat instead of ",
            " goes against sore knees ("),
        PlanEdit.of(
            "one modification for all",
            Exit.INFEASIBLE,
            plan -> everyModification(plan, "exercise", "goblet-partial-squat"),
            ", for sore knees: the same exercise twice: Goblet partial squat"),
        PlanEdit.of(
            "an exercise that is not known",
            Exit.BAD_INPUT,
            plan -> everyModification(plan, "exercise", "goblet-partial-sqat"),
            "/modifications/0/exercise: The exercise (goblet-partial-sqat) is not known.",
            "Maybe \"goblet-partial-squat\"?"),
        PlanEdit.of(
            "a track that is not known",
            Exit.BAD_INPUT,
            plan -> everyModification(plan, "limitation", "sore-kneez"),
            "/modifications/0/limitation: The track (sore-kneez) is not known.",
            "Maybe \"sore-knees\"?"),
        PlanEdit.of(
            "a modification of a warm-up move",
            Exit.BAD_INPUT,
            plan ->
                ((ObjectNode) plan.at("/timeline/1"))
                    .putArray("modifications")
                    .addObject()
                    .put("limitation", "sore-knees")
                    .put("exercise", "goblet-partial-squat"),
            " /timeline/1/modifications: The modifications must be in a work interval"));
  }

  private static Iterable<JsonNode> modified(ObjectNode plan) {
    return plan.get("timeline").findParents("modifications");
  }

  private static void everyModification(ObjectNode plan, String field, String value) {
    modified(plan)
        .forEach(it -> it.get("modifications").forEach(m -> ((ObjectNode) m).put(field, value)));
  }

  @ParameterizedTest
  @MethodSource("edits")
  void handBrokenClassesAreNamed(PlanEdit edit) {
    edit.holds(edit.check(folder, ClassPlan.whole()));
  }

  @Test
  void theHandWrittenClassIsGood() {
    Cli check = PlanEdit.check(folder, ClassPlan.whole(), "json").succeeds();
    assertThat(check.json().at("/feasible").booleanValue()).isTrue();
    assertThat(Json.pretty(ClassPlan.whole())).contains("\"limitation\": \"sore-knees\"");
  }
}

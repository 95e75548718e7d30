package counterset.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import counterset.json.InvalidInputException;
import counterset.json.JsonDocument;
import counterset.model.At;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanFileReaderTest {

  private static final String PROBLEM =
      "\"problem\": {\"problem\": 1, \"minutes\": 20, \"targets\": [\"lower\"]}";
  private static final PlanFileReader READER =
      new PlanFileReader(Fixture.PROBLEMS, Fixture.CATALOGUE);

  @TempDir Path folder;

  @Test
  void readsTheDecisions() throws IOException {
    Path file = folder.resolve("plan.json");
    Files.writeString(
        file,
        """
        {"plan": 1, %s, "score": "whatever",
         "supersets": [{"number": 1, "exercises": ["goblet-squat", "push-up"]},
                       {"number": 2, "exercises": ["split-squat"]},
                       {"number": 3, "exercises": ["split-squat", "split-squat"]}, {"exercises": []}],
         "timeline": [{"kind": "get-ready"}, {"kind": "warm-up", "exercise": "march", "side": "both"},
                      {"kind": "warm-up", "exercise": "march", "side": "both"},
                      {"kind": "warm-up", "exercise": "arm-circles"},
                      {"kind": "work", "exercise": "nonsense"}, 5, {"kind": []},
                      {"kind": "cool-down", "exercise": "quad-stretch", "side": "left"},
                      {"kind": "cool-down", "exercise": "quad-stretch", "side": "right"},
                      {"kind": "cool-down", "exercise": "chest-stretch", "side": "both"}]}
        """
            .formatted(PROBLEM));
    PlanFile plan = READER.read(file);
    assertThat(plan.problem().minutes()).isEqualTo(20);
    assertThat(plan.supersets())
        .containsExactly(
            new PlannedSuperset(1, List.of("goblet-squat", "push-up")),
            new PlannedSuperset(2, List.of("split-squat", "split-squat")),
            new PlannedSuperset(3, List.of("split-squat", "split-squat")),
            new PlannedSuperset(4, List.of()));
    assertThat(plan.warmUp()).containsExactly("march", "march", "arm-circles");
    assertThat(plan.coolDown()).containsExactly("quad-stretch", "chest-stretch");
    assertThat(plan.document().tree().get("score").asText()).isEqualTo("whatever");
  }

  @Test
  void allFaultsTogether() {
    assertThat(
            faults(
                """
                {"plan": 1, "problem": {"problem": 1, "minutes": 0, "targets": ["lower"]},
                 "supersets": [{"number": 2, "exercises": ["goblet-squad"]},
                               {"exercises": ["push-up", "push-up", "push-up"]},
                               {}],
                 "timeline": [{"kind": "warm-up", "exercise": "marsh"}]}
                """))
        .containsExactly(
            "x:1 /problem/minutes: The minutes (0) must be at least 1.",
            "x:2 /supersets/0/number: The number (2) must be 1: they count from 1.",
            "x:2 /supersets/0/exercises/0: The exercise (goblet-squad) is not known. Maybe"
                + " \"goblet-squat\"?",
            "x:3 /supersets/1/exercises: The superset has more exercises (3) than positions (2).",
            "x:4 /supersets/2/exercises: The exercises of the superset are missing.",
            "x:5 /timeline/0/exercise: The exercise (marsh) is not known. Maybe \"march\"?");
  }

  private static final String CLASS =
      """
      {"plan": 1, "problem": {"problem": 1, "minutes": 20, "targets": ["lower"],
                              "tracks": ["sore-knees", ["sore-knees", "sore-wrists"]]},
       "supersets": [{"exercises": ["goblet-squat", "push-up"]}, {"exercises": ["split-squat"]}],
       "timeline": [%s]}
      """;

  private static String work(String at, String... modifications) {
    List<String> list = new ArrayList<>();
    for (String modification : modifications) {
      String[] words = modification.split(" ");
      list.add("{\"limitation\": \"" + words[0] + "\", \"exercise\": \"" + words[1] + "\"}");
    }
    return "{\"kind\": \"work\", \"superset\": "
        + at.charAt(0)
        + ", \"position\": \""
        + at.charAt(1)
        + "\", \"modifications\": ["
        + String.join(", ", list)
        + "]}";
  }

  @Test
  void modificationsAreReadByTrackAndFirstPlace() {
    String both = "sore-knees+sore-wrists push-up";
    PlanFile plan =
        READER.read(
            JsonDocument.parse(
                "x",
                CLASS.formatted(
                    String.join(
                        ", ",
                        work("1A", "sore-knees push-up"),
                        work("2A", both),
                        work("2B", both),
                        work("2A", both)))));
    assertThat(plan.modifications())
        .containsExactly(Map.of(new At(1, 0), "push-up"), Map.of(new At(2, 0), "push-up"));
  }

  @Test
  void modificationsMustMakeSense() {
    String timeline =
        String.join(
            ",\n",
            work("1A", "sore-kneez push-up"),
            work("1B", "sore-knees pushup"),
            work("2A", "sore-knees push-up"),
            work("2B", "sore-knees goblet-squat"),
            work("1A", "sore-knees march"),
            "{\"kind\": \"rest\", \"modifications\": [{}]}");
    assertThat(faults(CLASS.formatted(timeline)))
        .satisfiesExactlyInAnyOrder(
            it ->
                assertThat(it)
                    .contains("/timeline/0/modifications/0/limitation: The track (sore-kneez)")
                    .contains("Maybe \"sore-knees\"?"),
            it ->
                assertThat(it)
                    .contains("/timeline/1/modifications/0/exercise: The exercise (pushup)")
                    .contains("Maybe \"push-up\"?"),
            it -> assertThat(it).contains("/timeline/3/", "must be (push-up), as at (2A) before"),
            it -> assertThat(it).contains("/timeline/4/", "(march) is not made for the supersets"),
            it -> assertThat(it).contains("/timeline/5/modifications: ", "in a work interval"),
            it -> assertThat(it).contains("/timeline/5/modifications/0/limitation: "),
            it -> assertThat(it).contains("/timeline/5/modifications/0/exercise: "));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[]",
        "5",
        "{}",
        "{\"plan\": 2}",
        "{\"plan\": \"1\"}",
        "{\"plan\": 1}",
        "{\"plan\": 1, \"problem\": 5, \"supersets\": {}, \"timeline\": {}}",
        "{\"plan\": 1, \"problem\": {}, \"supersets\": [5, [], {\"number\": \"x\", \"exercises\":"
            + " 5}], \"timeline\": [[]]}",
        "{\"plan\": 1, \"supersets\": [], \"timeline\": [{\"kind\": \"work\", \"modifications\":"
            + " 5}]}",
        "{\"plan\": 1, \"timeline\": [{\"kind\": 5, \"modifications\": [5, {\"limitation\": 5}]}]}",
        "{\"plan\": 1, \"supersets\": [{\"exercises\": [5, null, {}]}], \"timeline\": [{\"kind\":"
            + " \"warm-up\"}]}",
      })
  void noStructureCrashesIt(String text) {
    assertThat(faults(text)).isNotEmpty().allMatch(line -> line.startsWith("x:1"));
  }

  @Test
  void aProblemFileIsNoPlan() {
    assertThat(faults("{\"problem\": 1}"))
        .containsExactly(
            "x:1 /plan: The plan is missing: this is no plan file, which begins with the version"
                + " (1) of its format.");
  }

  private static List<String> faults(String text) {
    InvalidInputException e =
        catchThrowableOfType(
            InvalidInputException.class, () -> READER.read(JsonDocument.parse("x", text)));
    assertThat(e).isNotNull();
    return e.violations().stream().map(Object::toString).toList();
  }
}

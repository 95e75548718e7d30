package counterset.problem;

import static counterset.problem.Fixture.faults;
import static counterset.problem.Fixture.faultsWith;
import static counterset.problem.Fixture.problem;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterset.json.InvalidInputException;
import counterset.model.Intervals;
import counterset.model.Load;
import counterset.model.Pairing;
import counterset.model.Problem;
import counterset.model.Target;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProblemReaderTest {

  @TempDir Path folder;

  @Test
  void everythingElseHasADefault() throws IOException {
    Path file = folder.resolve("p.json");
    Files.writeString(
        file, "{\"problem\": 1, \"minutes\": 20, \"targets\": [{\"muscle\": \"chest\"}]}");
    Problem problem = Fixture.PROBLEMS.read(file);
    assertThat(problem.title()).isEqualTo("Session");
    assertThat(problem.clock()).isEqualTo(Intervals.EXPRESS);
    assertThat(problem.targets()).containsExactly(new Target("chest", 1, 1));
    assertThat(problem.level()).isEqualTo(Problem.DEFAULT_LEVEL);
    assertThat(problem.pairing()).isEqualTo(Pairing.OPPOSING);
    assertThat(problem.seed()).isEqualTo(1);
    assertThat(problem.date()).isEmpty();
    assertThat(problem.equipment()).isEmpty();
    assertThat(problem.tracks()).isEmpty();
  }

  @Test
  void ownedEquipmentServesAllLoadsUnlessTold() {
    Problem problem =
        problem(
            "{\"problem\": 1, \"minutes\": 20, \"targets\": [\"lower\"], \"equipment\": [{\"id\":"
                + " \"mat\"}, {\"id\": \"dumbbell\", \"count\": 2, \"kg\": [10, 6.5], \"loads\":"
                + " [\"heavy\", \"light\"]}]}");
    assertThat(problem.equipment().get(0).loads()).containsExactly(Load.values());
    assertThat(problem.equipment().get(1).kg()).containsExactly(6.5, 10.0);
    assertThat(problem.equipment().get(1).loads()).containsExactly(Load.LIGHT, Load.HEAVY);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "[\"lower\"]                                                  | quadriceps 1 1, hamstrings"
            + " 1 1",
        "[{\"muscle\": \"whole\", \"minSets\": 2}]                    | quadriceps 1 2, hamstrings"
            + " 1 2, chest 1 2",
        "[\"lower\", {\"muscle\": \"hamstrings\", \"emphasis\": 3}]   | quadriceps 1 1, hamstrings"
            + " 3 1",
        "[{\"muscle\": \"hamstrings\", \"emphasis\": 3}, \"lower\"]   | hamstrings 3 1, quadriceps"
            + " 1 1",
        "[\"whole\", {\"muscle\": \"lower\", \"emphasis\": 2}]        | quadriceps 2 1, hamstrings"
            + " 2 1, chest 1 1",
        "[\"shins\", {\"muscle\": \"chest\", \"minSets\": 0}]         | shins 1 1, chest 1 0",
      })
  void regionsSpellOutAndTheMoreExplicitEntryWins(String targets, String expected) {
    Problem problem = problem("{\"problem\": 1, \"minutes\": 20, \"targets\": " + targets + "}");
    assertThat(
            problem.targets().stream()
                .map(t -> t.muscle() + " " + t.emphasis() + " " + t.minSets()))
        .containsExactly(expected.split(", "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "[\"lwoer\"]              | The muscle (lwoer) is not known. Maybe \"lower\"?",
        "[\"core\"]               | The region (core) has no muscle groups in this catalogue.",
        "[\"chest\", \"chest\"]   | The target (chest) is named twice; keep one.",
        "[\"lower\", \"lower\"]   | The target (lower) is named twice; keep one.",
      })
  void targetsThatCannotBe(String targets, String message) {
    assertThat(faults("{\"problem\": 1, \"minutes\": 20, \"targets\": " + targets + "}"))
        .singleElement()
        .asString()
        .startsWith("p.json:1 /targets/")
        .endsWith(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"equipment\": [{\"id\": \"dumbel\"}]            | /equipment/0/id: The equipment (dumbel)"
            + " is not known. Maybe \"dumbbell\"?",
        "\"equipment\": [{\"id\": \"mat\"}, {\"id\": \"mat\"}] | /equipment/1/id: The equipment"
            + " (mat) is listed twice; write one entry with count and kg.",
        "\"equipment\": [{\"id\": \"mat\", \"count\": 0}] | /equipment/0/count: The count (0) must"
            + " be at least 1.",
        "\"equipment\": [{\"id\": \"mat\", \"kg\": [-2]}] | /equipment/0/kg/0: The kg (-2) must be"
            + " above 0.",
        "\"limitations\": [\"sore-knee\"]                 | /limitations/0: The limitation"
            + " (sore-knee) is not known. Maybe \"sore-knees\"?",
        "\"tracks\": [[\"sore-knees\", \"sore-wrist\"]]   | /tracks/0/1: The limitation"
            + " (sore-wrist) is not known. Maybe \"sore-wrists\"?",
        "\"limitations\": [\"sore-knees\"], \"tracks\": [\"sore-knees\"] | /tracks/0: The track"
            + " (sore-knees) needs no modification: that binds the whole session already"
            + " (limitations). Keep one of the two.",
        "\"tracks\": [\"sore-knees\", [\"sore-knees\"]]   | /tracks/1: The track (sore-knees) is"
            + " listed twice; keep one.",
        "\"include\": [\"squat\"]                         | /include/0: The exercise (squat) is not"
            + " known. Maybe \"split-squat\"?",
        "\"include\": [\"march\"]                         | /include/0: The exercise (march) is"
            + " made for the warm-up and has no place in a superset.",
        "\"exclude\": [\"lunges\"]                        | /exclude/0: The exercise, family or"
            + " pattern (lunges) is not known. Maybe \"lunge\"?",
        "\"likes\": [\"squat\"], \"dislikes\": [\"squat\"] | /dislikes/0: The likes name (squat) as"
            + " well; it cannot be both, keep one.",
        "\"recent\": [{\"date\": \"2026-02-30\", \"exercises\": []}] | /recent/0/date: The date"
            + " (2026-02-30) is not in the calendar.",
        "\"recent\": [{\"date\": \"2026-03-02\", \"exercises\": [\"push-ups\"]}] |"
            + " /recent/0/exercises/0: The exercise (push-ups) is not known. Maybe \"push-up\"?",
        "\"date\": \"2026-03-01\", \"recent\": [{\"date\": \"2026-03-02\", \"exercises\": []}] |"
            + " /recent/0/date: The date (2026-03-02) is after the session's own (2026-03-01).",
        "\"weights\": {\"floorTrips\": 3}                 | /weights/floorTrips: The constraint"
            + " (floorTrips) is not known. Maybe \"floorTrip\"?",
        "\"weights\": {\"floorTrip\": -3}                 | /weights/floorTrip: The floorTrip (-3)"
            + " must be at least 0.",
        "\"level\": 0                                     | /level: The level (0) must be at least"
            + " 1.",
        "\"keep\": [{\"at\": \"1C\", \"exercise\": \"push-up\"}] | /keep/0/at: The position (C) of"
            + " (1C) does not exist: a superset has 2 positions (clock.perSuperset).",
        "\"keep\": [{\"at\": \"1A\", \"exercise\": \"push-up\"}, {\"at\": \"2A\", \"exercise\":"
            + " \"push-up\"}] | /keep/1/exercise: The exercise (push-up) is kept at (1A) already; a"
            + " session has it once.",
        "\"keep\": [{\"at\": \"1A\", \"exercise\": \"goblet-squat\"}, {\"at\": \"1B\","
            + " \"exercise\": \"heavy-goblet-squat\"}] | /keep/1/exercise: The exercise"
            + " (heavy-goblet-squat) is kept at (1A) already, as (goblet-squat); a session has it"
            + " once.",
        "\"keep\": [{\"at\": \"1A\", \"exercise\": \"push-up\"}, {\"at\": \"1A\", \"exercise\":"
            + " \"goblet-squat\"}] | /keep/1/at: The place (1A) is kept for (push-up) already.",
        "\"keep\": [{\"at\": \"1A\", \"exercise\": \"split-squat\"}, {\"at\": \"2B\", \"exercise\":"
            + " \"split-squat\"}] | /keep/1/exercise: The exercise (split-squat) is kept at (1A)"
            + " already; a session has it once.",
        "\"keep\": [{\"at\": \"1A\", \"exercise\": \"split-squat\"}, {\"at\": \"1B\", \"exercise\":"
            + " \"push-up\"}] | /keep/1/at: The unilateral exercise (split-squat) at (1A) fills its"
            + " whole superset, one side after the other; keep nothing beside it.",
        "\"exclude\": [\"push\"], \"keep\": [{\"at\": \"1A\", \"exercise\": \"push-up\"}] |"
            + " /keep/0/exercise: The exercise (push-up) is excluded as well (push); it cannot be"
            + " both, drop one.",
        "\"exclude\": [\"goblet-squat\"], \"include\": [\"heavy-goblet-squat\"] | /include/0: The"
            + " exercise (heavy-goblet-squat) is excluded as well (goblet-squat); it cannot be"
            + " both, drop one.",
      })
  void aFault(String more, String expected) {
    assertThat(faultsWith(more)).containsExactly("p.json:2 " + expected);
  }

  @Test
  void bothSidesOfAUnilateralExerciseMayBeKept() {
    assertThat(
            faultsWith(
                "\"keep\": [{\"at\": \"2A\", \"exercise\": \"split-squat\"}, {\"at\": \"2B\","
                    + " \"exercise\": \"split-squat\"}, {\"at\": \"1A\", \"exercise\":"
                    + " \"push-up\"}]"))
        .isEmpty();
    assertThat(
            faultsWith(
                "\"clock\": {\"perSuperset\": 3}, \"keep\": [{\"at\": \"1C\", \"exercise\":"
                    + " \"push-up\"}]"))
        .isEmpty();
  }

  @Test
  void manyFaultsOfAllKindsComeTogetherInTheOrderOfTheText() {
    assertThat(
            faultsWith(
                """
                "clock": {"perSuperset": 9, "work": "long"},
                "equipment": [{"id": "dumbel", "kilos": 3}],
                "limitations": ["sore-knee"],
                "levle": 2,
                "keep": [{"at": "1A", "exercise": "pushup"}],
                "weights": {"x": 1}
                """))
        .extracting(line -> line.substring(0, line.indexOf(": ")))
        .containsExactly(
            "p.json:2 /clock/perSuperset",
            "p.json:2 /clock/work",
            "p.json:3 /equipment/0/id",
            "p.json:3 /equipment/0/kilos",
            "p.json:4 /limitations/0",
            "p.json:5 /levle",
            "p.json:6 /keep/0/exercise",
            "p.json:7 /weights/x");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "[]",
        "5",
        "{}",
        "{\"problem\": [], \"minutes\": {}, \"targets\": 3, \"clock\": 1, \"equipment\": {},"
            + " \"keep\": [1, []], \"limitations\": [{}], \"tracks\": [1, {}], \"recent\": [5],"
            + " \"weights\": [], \"date\": 5, \"seed\": 1e99}",
      })
  void nothingOfTheWrongShapeCrashes(String text) {
    assertThat(faults(text)).isNotEmpty();
  }

  @Test
  void aMissingFileIsAFault() {
    assertThatThrownBy(() -> Fixture.PROBLEMS.read(folder.resolve("none.json")))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("There is no such file.");
  }

  @Test
  void tracksAreSetsOfLimitations() {
    Problem problem =
        problem(
            "{\"problem\": 1, \"minutes\": 20, \"targets\": [\"lower\"],"
                + " \"tracks\": [\"sore-wrists\", [\"sore-knees\", \"sore-wrists\"]]}");
    assertThat(problem.tracks())
        .containsExactly(Set.of("sore-wrists"), Set.of("sore-knees", "sore-wrists"));
  }
}

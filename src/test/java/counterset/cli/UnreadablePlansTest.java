package counterset.cli;

import static counterset.cli.GoodPlan.exercises;
import static counterset.cli.GoodPlan.object;
import static counterset.cli.GoodPlan.put;

import counterset.json.Json;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** {@code check} names what leaves no session to score. */
class UnreadablePlansTest {

  @TempDir Path folder;

  static Stream<PlanEdit> edits() {
    return Stream.of(
        PlanEdit.of(
            "an unknown exercise",
            Exit.BAD_INPUT,
            plan -> put(plan, "3A", "dumbbell-partial-sumo-sqat"),
            " /supersets/2/exercises/0: The exercise (dumbbell-partial-sumo-sqat) is not known.",
            "Maybe \"dumbbell-partial-sumo-squat\"?"),
        PlanEdit.of(
            "three exercises in a superset of two",
            Exit.BAD_INPUT,
            plan -> exercises(plan, 4).add("partial-squat"),
            " /supersets/3/exercises: The superset has more exercises (3) than positions (2)."),
        PlanEdit.of(
            "a number twice",
            Exit.BAD_INPUT,
            plan -> object(plan, "/supersets/4").put("number", 4),
            " /supersets/4/number: The number (4) must be 5"),
        PlanEdit.of(
            "an unknown property of the plan",
            Exit.BAD_INPUT,
            plan -> plan.put("superset", 8),
            " /superset",
            "not known",
            "\"supersets\""),
        PlanEdit.of(
            "an unknown property of a superset",
            Exit.BAD_INPUT,
            plan -> object(plan, "/supersets/0").put("colour", "red"),
            " /supersets/0/colour: "),
        PlanEdit.of(
            "an unknown property of the problem",
            Exit.BAD_INPUT,
            plan -> object(plan, "/problem").put("minuts", 20),
            " /problem/minuts: ",
            "\"minutes\""),
        PlanEdit.of(
            "another version",
            Exit.BAD_INPUT,
            plan -> plan.put("plan", 2),
            " /plan: The plan (2) must be 1."),
        PlanEdit.of(
            "no problem",
            Exit.BAD_INPUT,
            plan -> plan.remove("problem"),
            " /problem: The problem is missing"),
        PlanEdit.of(
            "no supersets",
            Exit.BAD_INPUT,
            plan -> plan.remove("supersets"),
            "The supersets are missing."),
        PlanEdit.of(
            "supersets that are no list",
            Exit.BAD_INPUT,
            plan -> plan.put("supersets", "eight"),
            " /supersets: The supersets (eight) must be a list."),
        PlanEdit.of(
            "an exercise that is a number",
            Exit.BAD_INPUT,
            plan -> exercises(plan, 1).set(0, 7),
            " /supersets/0/exercises/0: ",
            "(7) must be text."),
        PlanEdit.of(
            "nothing for an exercise",
            Exit.BAD_INPUT,
            plan -> exercises(plan, 1).set(1, Json.object().nullNode()),
            " /supersets/0/exercises/1: ",
            "must be text."),
        PlanEdit.of(
            "a warm-up move among the work",
            Exit.BAD_INPUT,
            plan -> put(plan, "3A", "warm-march"),
            " /supersets/2/exercises/0: ",
            "warm-up"));
  }

  @ParameterizedTest
  @MethodSource("edits")
  void isNamedWithItsPlace(PlanEdit edit) {
    edit.holds(edit.check(folder, GoodPlan.whole()));
  }
}

package counterset.cli;

import static counterset.cli.GoodPlan.exercises;
import static counterset.cli.GoodPlan.list;
import static counterset.cli.GoodPlan.object;
import static counterset.cli.GoodPlan.put;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** {@code check} names the rule and the place of whatever one edit breaks in a good plan. */
class BrokenPlansTest {

  /**
   * One edit.
   *
   * @param status of the check of the decisions alone, without what follows from them
   * @param says what the check says on one line, in this order
   */
  private record Edit(String name, int status, Consumer<ObjectNode> change, List<String> says) {

    @Override
    public String toString() {
      return name;
    }
  }

  @TempDir Path folder;

  private Cli check(ObjectNode plan) {
    Cli.write(folder, "plan.json", Json.pretty(plan));
    return Cli.run(folder, "check", "plan.json").speaksPlainly();
  }

  private static Edit breaks(String name, Consumer<ObjectNode> change, String... says) {
    return new Edit(name, Exit.INFEASIBLE, change, List.of(says));
  }

  private static Edit misses(String name, Consumer<ObjectNode> change, String... says) {
    return new Edit(name, Exit.DONE, change, List.of(says));
  }

  static Stream<Edit> edits() {
    return Stream.of(
        breaks(
            "an exercise twice",
            plan -> put(plan, "3A", "dumbbell-partial-squat"),
            "1B to 3A: the same exercise twice",
            "Maybe swap one of them."),
        breaks(
            "two variants of an exercise",
            plan -> put(plan, "3A", "one-dumbbell-romanian-deadlift"),
            "1A to 3A: the same exercise twice",
            "Maybe swap one of them."),
        breaks(
            "sides apart",
            plan -> put(plan, "2B", "partial-squat"),
            "2A",
            "is one-sided, and its superset does not hold left side and right side"),
        breaks(
            "unsafe",
            plan -> put(plan, "3A", "goblet-squat"),
            "3A: Goblet squat goes against sore knees (knee demand 2, at most 1",
            "Swap it."),
        breaks(
            "without the equipment",
            plan -> put(plan, "3B", "band-deadlift"),
            "3B: ",
            "long band",
            "not among the equipment",
            "list the equipment."),
        breaks(
            "too few dumbbells",
            plan -> object(plan, "/problem/equipment/0").put("count", 1),
            "1A: Dumbbell Romanian deadlift needs ",
            "dumbbells",
            "not among the equipment"),
        breaks(
            "no heavy dumbbell",
            plan -> list(plan, "/problem/equipment/0/loads").removeAll().add("light").add("medium"),
            "2A",
            "Suitcase deadlift needs ",
            "heavy",
            "not among the equipment"),
        breaks(
            "a changeover that does not fit",
            plan -> put(plan, "3B", "ankle-weight-leg-curl-wall"),
            "3A to 3B: ",
            " s too long for the changeover: ",
            " s needed, ",
            " s there",
            "lengthen the pause"),
        breaks(
            "a superset too many",
            plan ->
                list(plan, "/supersets")
                    .addObject()
                    .put("number", 9)
                    .putArray("exercises")
                    .add("prone-leg-curl")
                    .add("glute-bridge"),
            "All places filled, the session takes 10 s more than 20 minutes",
            "Maybe drop a superset"),
        breaks(
            "a kept exercise elsewhere",
            plan -> {
              put(plan, "1A", "dumbbell-partial-squat");
              put(plan, "1B", "dumbbell-romanian-deadlift");
            },
            "1A: Dumbbell Romanian deadlift is kept at 1A, and Dumbbell partial squat stands there",
            "Maybe put it back"),
        breaks(
            "above the level",
            plan -> object(plan, "/problem").put("level", 1),
            "2A",
            "Suitcase deadlift is level 2, above level 1",
            "raise the level"),
        breaks(
            "excluded",
            plan -> list(plan, "/problem/exclude").add("clam"),
            "8A",
            "Ankle-weight raised clam is excluded",
            "exclude it no longer"),
        misses(
            "a target without sets",
            plan -> list(plan, "/problem/targets").addObject().put("muscle", "biceps"),
            "Biceps: 0 of 1 direct sets",
            "Maybe more minutes"),
        misses(
            "an empty superset",
            plan -> exercises(plan, 4).removeAll(),
            "Superset 4: not full, although the clock has room for it"),
        misses("half a superset", plan -> exercises(plan, 4).remove(1), "Superset 4: not full"),
        misses(
            "a superset too few",
            plan -> list(plan, "/supersets").remove(7),
            "Superset 8: not full, although the clock has room for it"),
        misses(
            "equipment left lying",
            plan -> list(plan, "/problem/equipment").addObject().put("id", "kettlebell"),
            "Kettlebell: listed, and no exercise uses it"),
        misses(
            "a wish left out",
            plan -> list(plan, "/problem/include").add("glute-bridge"),
            "Glute bridge: asked for, and not in the session"));
  }

  @Test
  void theGoodPlanIsGood() {
    for (ObjectNode plan : List.of(GoodPlan.whole(), GoodPlan.byHand())) {
      Cli check = check(plan);
      assertThat(check.status()).as(check.toString()).isEqualTo(Exit.DONE);
      assertThat(check.out())
          .startsWith("The session keeps every rule.\n")
          .doesNotContain("Unmet wishes", "The file says something else");
    }
  }

  @ParameterizedTest
  @MethodSource("edits")
  void theRuleAndThePlaceAreNamed(Edit edit) {
    ObjectNode plan = GoodPlan.byHand();
    edit.change().accept(plan);
    Cli check = check(plan);
    assertThat(check.status()).as(check.toString()).isEqualTo(edit.status());
    assertThat(check.out().lines())
        .as(check.out())
        .anySatisfy(
            line -> assertThat(line).containsSubsequence(edit.says().toArray(String[]::new)));
    assertThat(check.out())
        .startsWith(
            edit.status() == Exit.DONE
                ? "The session keeps every rule.\nUnmet wishes:\n"
                : "The session breaks a rule.\n");
  }

  @ParameterizedTest
  @MethodSource("edits")
  void inAWholePlanTheFiguresThatFollowAreNamedAsWell(Edit edit) {
    ObjectNode plan = GoodPlan.whole();
    edit.change().accept(plan);
    Cli check = check(plan);
    assertThat(check.status())
        .as(check.toString())
        .isEqualTo(edit.status() == Exit.DONE ? Exit.BAD_INPUT : Exit.INFEASIBLE);
    assertThat(check.out())
        .contains("The file says something else than its session works out to:\n")
        .contains(" /score/");
  }
}

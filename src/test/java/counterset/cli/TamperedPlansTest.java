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

/** {@code check} names what a plan file says wrongly of itself, with a JSON pointer. */
class TamperedPlansTest {

  /**
   * One edit.
   *
   * @param says what one line says, in this order; it ends the run with status 2
   */
  private record Edit(String name, Consumer<ObjectNode> change, List<String> says) {

    @Override
    public String toString() {
      return name;
    }
  }

  @TempDir Path folder;

  private Cli check(ObjectNode plan, String... more) {
    Path file = Cli.write(folder, "plan.json", Json.pretty(plan));
    return Cli.run(
            folder,
            Stream.concat(Stream.of("check", file.toString()), Stream.of(more))
                .toArray(String[]::new))
        .speaksPlainly();
  }

  private static Edit edit(String name, Consumer<ObjectNode> change, String... says) {
    return new Edit(name, change, List.of(says));
  }

  /** Edits of figures: the session itself is as good as before. */
  static Stream<Edit> figures() {
    return Stream.of(
        edit(
            "a gap in the timeline",
            plan -> object(plan, "/timeline/3").put("start", 71),
            " /timeline/3/start: says 71, works out as 70."),
        edit(
            "a wrong end",
            plan -> object(plan, "/timeline/28").put("end", 1200),
            " /timeline/28/end: says 1200, works out as 1195."),
        edit(
            "an interval too few",
            plan -> list(plan, "/timeline").remove(28),
            " /timeline: has 28 entries, works out as 29."),
        edit(
            "another exercise on the clock than in the superset",
            plan -> object(plan, "/timeline/6").put("exercise", "partial-squat"),
            " /timeline/6/exercise: says partial-squat, works out as dumbbell-romanian-deadlift."),
        edit(
            "the score",
            plan -> object(plan, "/score").put("soft", 999),
            " /score/soft: says 999, works out as "),
        edit(
            "one constraint",
            plan -> object(plan, "/score/constraints/4").put("matches", 3),
            " /score/constraints/4/matches: says 3, works out as 0."),
        edit(
            "coverage",
            plan -> object(plan, "/coverage/0").put("sets", 9.5),
            " /coverage/0/sets: says 9.5, works out as 5."),
        edit(
            "a muscle group of coverage",
            plan -> object(plan, "/coverage/5").put("muscle", "biceps"),
            " /coverage/5/muscle: says biceps, works out as calves."),
        edit(
            "the seconds of a changeover",
            plan -> object(plan, "/changeovers/1").put("seconds", 0),
            " /changeovers/1/seconds: says 0, works out as 5."),
        edit(
            "the room of a changeover",
            plan -> object(plan, "/changeovers/1").put("available", 60),
            " /changeovers/1/available: says 60, works out as 25."),
        edit(
            "the kind of a superset",
            plan -> object(plan, "/supersets/2").put("kind", "agonist-antagonist"),
            " /supersets/2/kind: says agonist-antagonist, works out as opposite-region."),
        edit(
            "the totals",
            plan -> object(plan, "/totals").put("loadedPositions", 16),
            " /totals/loadedPositions: says 16, works out as 15."),
        edit(
            "a caution left out",
            plan -> list(plan, "/cautions").remove(0),
            " /cautions: has 4 entries, works out as 5."));
  }

  /** Edits that leave no session to score. */
  static Stream<Edit> unreadable() {
    return Stream.of(
        edit(
            "an unknown exercise",
            plan -> put(plan, "3A", "dumbbell-partial-sumo-sqat"),
            " /supersets/2/exercises/0: The exercise (dumbbell-partial-sumo-sqat) is not known.",
            "Maybe \"dumbbell-partial-sumo-squat\"?"),
        edit(
            "three exercises in a superset of two",
            plan -> exercises(plan, 4).add("partial-squat"),
            " /supersets/3/exercises: The superset has more exercises (3) than positions (2)."),
        edit(
            "a number twice",
            plan -> object(plan, "/supersets/4").put("number", 4),
            " /supersets/4/number: The number (4) must be 5"),
        edit(
            "an unknown property of the plan",
            plan -> plan.put("superset", 8),
            " /superset",
            "not known",
            "\"supersets\""),
        edit(
            "an unknown property of a superset",
            plan -> object(plan, "/supersets/0").put("colour", "red"),
            " /supersets/0/colour: "),
        edit(
            "an unknown property of the problem",
            plan -> object(plan, "/problem").put("minuts", 20),
            " /problem/minuts: ",
            "\"minutes\""),
        edit("another version", plan -> plan.put("plan", 2), " /plan: The plan (2) must be 1."),
        edit("no problem", plan -> plan.remove("problem"), " /problem: The problem is missing"),
        edit("no supersets", plan -> plan.remove("supersets"), "The supersets are missing."),
        edit(
            "supersets that are no list",
            plan -> plan.put("supersets", "eight"),
            " /supersets: The supersets (eight) must be a list."),
        edit(
            "an exercise that is a number",
            plan -> exercises(plan, 1).set(0, 7),
            " /supersets/0/exercises/0: ",
            "(7) must be text."),
        edit(
            "nothing for an exercise",
            plan -> exercises(plan, 1).set(1, Json.object().nullNode()),
            " /supersets/0/exercises/1: ",
            "must be text."),
        edit(
            "a warm-up move among the work",
            plan -> put(plan, "3A", "warm-march"),
            " /supersets/2/exercises/0: ",
            "warm-up"));
  }

  @ParameterizedTest
  @MethodSource("figures")
  void figuresThatDoNotFollowAreNamed(Edit edit) {
    ObjectNode plan = GoodPlan.whole();
    edit.change().accept(plan);
    Cli check = check(plan);
    assertThat(check.status()).as(check.toString()).isEqualTo(Exit.BAD_INPUT);
    assertThat(check.out())
        .startsWith("The session keeps every rule.\nThe file says something else than")
        .contains("plan.json:");
    assertSays(edit, check.out());
  }

  @ParameterizedTest
  @MethodSource("unreadable")
  void whatLeavesNoSessionToScoreIsNamed(Edit edit) {
    ObjectNode plan = GoodPlan.whole();
    edit.change().accept(plan);
    Cli check = check(plan);
    assertThat(check.status()).as(check.toString()).isEqualTo(Exit.BAD_INPUT);
    assertSays(edit, check.err() + check.out());
  }

  private static void assertSays(Edit edit, String text) {
    assertThat(text.lines())
        .as(text)
        .anySatisfy(
            line -> assertThat(line).containsSubsequence(edit.says().toArray(String[]::new)));
  }

  @Test
  void wordsMayBePutBetter() {
    ObjectNode plan = GoodPlan.whole();
    object(plan, "/timeline/0").put("say", "Ready, everyone?");
    object(plan, "/supersets/0").putArray("why").add("Because I like it.");
    assertThat(check(plan).status()).isEqualTo(Exit.DONE);
  }

  @Test
  void jsonTellsTheSame() {
    ObjectNode plan = GoodPlan.whole();
    object(plan, "/score").put("soft", 999);
    put(plan, "3A", "goblet-squat");
    Cli check = check(plan, "--format", "json");
    assertThat(check.status()).isEqualTo(Exit.INFEASIBLE);
    assertThat(check.json().at("/feasible").booleanValue()).isFalse();
    assertThat(check.json().at("/faults/0").textValue()).startsWith("3A: Goblet squat goes ");
    assertThat(check.json().at("/differences").findValuesAsText("pointer"))
        .contains("/score/hard", "/score/soft");
  }
}

package counterset.cli;

import static counterset.cli.GoodPlan.list;
import static counterset.cli.GoodPlan.object;
import static counterset.cli.GoodPlan.put;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** {@code check} names figures of a plan file that do not follow from its session. */
class TamperedPlansTest {

  @TempDir Path folder;

  static Stream<PlanEdit> figures() {
    return Stream.of(
        PlanEdit.of(
            "a gap in the timeline",
            Exit.BAD_INPUT,
            plan -> object(plan, "/timeline/3").put("start", 71),
            " /timeline/3/start: says 71, works out as 70."),
        PlanEdit.of(
            "a wrong end",
            Exit.BAD_INPUT,
            plan -> object(plan, "/timeline/28").put("end", 1200),
            " /timeline/28/end: says 1200, works out as 1195."),
        PlanEdit.of(
            "an interval too few",
            Exit.BAD_INPUT,
            plan -> list(plan, "/timeline").remove(28),
            " /timeline: has 28 entries, works out as 29."),
        PlanEdit.of(
            "another exercise on the clock than in the superset",
            Exit.BAD_INPUT,
            plan -> object(plan, "/timeline/6").put("exercise", "partial-squat"),
            " /timeline/6/exercise: says partial-squat, works out as dumbbell-romanian-deadlift."),
        PlanEdit.of(
            "the score",
            Exit.BAD_INPUT,
            plan -> object(plan, "/score").put("soft", 999),
            " /score/soft: says 999, works out as "),
        PlanEdit.of(
            "one constraint",
            Exit.BAD_INPUT,
            plan -> object(plan, "/score/constraints/4").put("matches", 3),
            " /score/constraints/4/matches: says 3, works out as 0."),
        PlanEdit.of(
            "coverage",
            Exit.BAD_INPUT,
            plan -> object(plan, "/coverage/0").put("sets", 9.5),
            " /coverage/0/sets: says 9.5, works out as 5."),
        PlanEdit.of(
            "a muscle group of coverage",
            Exit.BAD_INPUT,
            plan -> object(plan, "/coverage/5").put("muscle", "biceps"),
            " /coverage/5/muscle: says biceps, works out as calves."),
        PlanEdit.of(
            "the seconds of a changeover",
            Exit.BAD_INPUT,
            plan -> object(plan, "/changeovers/1").put("seconds", 0),
            " /changeovers/1/seconds: says 0, works out as 5."),
        PlanEdit.of(
            "the room of a changeover",
            Exit.BAD_INPUT,
            plan -> object(plan, "/changeovers/1").put("available", 60),
            " /changeovers/1/available: says 60, works out as 25."),
        PlanEdit.of(
            "the kind of a superset",
            Exit.BAD_INPUT,
            plan -> object(plan, "/supersets/2").put("kind", "agonist-antagonist"),
            " /supersets/2/kind: says agonist-antagonist, works out as opposite-region."),
        PlanEdit.of(
            "the totals",
            Exit.BAD_INPUT,
            plan -> object(plan, "/totals").put("loadedPositions", 16),
            " /totals/loadedPositions: says 16, works out as 15."),
        PlanEdit.of(
            "a caution left out",
            Exit.BAD_INPUT,
            plan -> list(plan, "/cautions").remove(0),
            " /cautions: has 4 entries, works out as 5."));
  }

  @ParameterizedTest
  @MethodSource("figures")
  void figuresThatDoNotFollowAreNamed(PlanEdit edit) {
    Cli check = edit.check(folder, GoodPlan.whole());
    edit.holds(check);
    assertThat(check.out())
        .startsWith("The session keeps every rule.\nThe file says something else than")
        .contains("plan.json:");
  }

  @Test
  void wordsMayBePutBetter() {
    ObjectNode plan = GoodPlan.whole();
    object(plan, "/timeline/0").put("say", "Ready, everyone?");
    object(plan, "/supersets/0").putArray("why").add("Because I like it.");
    assertThat(PlanEdit.check(folder, plan, "text").status()).isEqualTo(Exit.DONE);
  }

  @Test
  void jsonTellsTheSame() {
    ObjectNode plan = GoodPlan.whole();
    object(plan, "/score").put("soft", 999);
    put(plan, "3A", "goblet-squat");
    Cli check = PlanEdit.check(folder, plan, "json");
    assertThat(check.status()).isEqualTo(Exit.INFEASIBLE);
    assertThat(check.json().at("/feasible").booleanValue()).isFalse();
    assertThat(check.json().at("/faults/0").textValue()).startsWith("3A: Goblet squat goes ");
    assertThat(check.json().at("/differences").findValuesAsText("pointer"))
        .contains("/score/hard", "/score/soft");
  }
}

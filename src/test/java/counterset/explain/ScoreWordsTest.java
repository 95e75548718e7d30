package counterset.explain;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.report.Plans;
import counterset.report.RandomPlans;
import counterset.score.Constraints;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class ScoreWordsTest {

  @TestFactory
  Stream<DynamicTest> everyFaultOfAnySessionHasALine() {
    return Stream.iterate(1L, seed -> seed + 1)
        .limit(100)
        .map(seed -> DynamicTest.dynamicTest("seed " + seed, () -> lines(RandomPlans.of(seed))));
  }

  private static void lines(Plan plan) {
    for (String line : faults(plan)) {
      assertThat(line)
          .matches("[A-Z0-9].*\\.")
          .doesNotContain("null", "Optional", "  ", ": .", "\n");
    }
  }

  private static List<String> faults(Plan plan) {
    return plan.matches().stream()
        .filter(FaultWords::isFault)
        .map(match -> FaultWords.of(match, plan, Plans.CATALOGUE))
        .toList();
  }

  @Test
  void theScoreHasALineForEveryConstraint() {
    Plan plan = Plans.legs();
    assertThat(plan.score().lines())
        .extracting(PlanScore.Line::id)
        .containsExactlyElementsOf(Constraints.ids(Constraints.OF_SESSIONS));
    for (PlanScore.Line line : plan.score().lines()) {
      assertThat(ScoreWords.counted(line, plan)).matches("[A-Z][^:]+: .+");
    }
  }

  @Test
  void whatWasCounted() {
    Plan plan = Plans.legs();
    assertThat(plan.score().lines().stream().map(line -> ScoreWords.counted(line, plan)))
        .contains("Equipment changes: 5 items taken up or put away");
    assertThat(ScoreWords.points(12)).isEqualTo("+12");
    assertThat(ScoreWords.points(0)).isEqualTo("0");
  }

  @Test
  void faultsNameThePlaceTheExercisesTheRuleAndTheRemedy() {
    assertThat(faults(Plans.broken()))
        .contains(
            "1A to 1B: 23 s too long for the changeover: Goblet squat to Ankle-weight side-lying leg raise (28 s"
                + " needed, 5 s there). Maybe swap one of them, change their order, or lengthen the pause.",
            "1A: Goblet squat goes against sore knees (knee demand 2, at most 1, deep-knee-flexion). Swap it.",
            "1B: Ankle-weight side-lying leg raise needs ankle weights, not among the equipment. Maybe swap it, or list"
                + " the equipment.",
            "4A: Rear-foot-raised split squat is level 3, above level 2. Maybe swap it, or raise the level.",
            "Hamstrings: 1 set too few, with 0 direct and 2 indirect. Maybe more minutes, fewer targets, or more equipment.",
            "Superset 3: not full, although the clock has room for it. Maybe more equipment, fewer limitations, or"
                + " fewer exclusions.",
            "Loop band: listed, and no exercise uses it. Maybe leave it out, or add a target that it trains.");
  }
}

package counterset.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import counterset.model.At;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.planning.constraints.SessionConstraint;
import counterset.planning.constraints.SessionConstraint.Level;
import counterset.report.Plans;
import counterset.report.RandomPlans;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ScoreWordsTest {

  @TestFactory
  Stream<DynamicTest> everyMatchOfAnySessionHasALine() {
    return Stream.iterate(1L, seed -> seed + 1)
        .limit(100)
        .map(seed -> DynamicTest.dynamicTest("seed " + seed, () -> lines(RandomPlans.of(seed))));
  }

  private static void lines(Plan plan) {
    for (Match match : plan.matches()) {
      String line = FaultWords.of(match, plan, Plans.CATALOGUE);
      assertThat(line)
          .matches("[A-Z0-9].*\\.")
          .doesNotContain("null", "Optional", "  ", ": .", "\n");
    }
  }

  @ParameterizedTest
  @EnumSource(SessionConstraint.class)
  void everyConstraintHasWords(SessionConstraint constraint) {
    Plan plan = Plans.legs();
    PlanScore.Line line = plan.score().lines().get(constraint.ordinal());
    assertThat(ScoreWords.of(line, plan)).matches("[A-Z][^:]+: .+: [-+]?[0-9]+");
    boolean mendable = constraint.level() != Level.SOFT;
    assertThat(Remedies.of(constraint).isEmpty()).isEqualTo(!mendable);
    Match match =
        new Match(
            constraint.id(), 1, -1, List.of(new At(1, 0), new At(1, 1)), Optional.of("quadriceps"));
    assertThat(FaultWords.isFault(match)).isEqualTo(mendable);
    assertThat(FaultWords.of(match, plan, Plans.CATALOGUE)).isNotBlank();
  }

  @Test
  void whatWasCountedAndWhatItCosts() {
    Plan plan = Plans.legs();
    PlanScore.Line line = plan.score().lines().get(SessionConstraint.EQUIPMENT_CHANGE.ordinal());
    assertThat(ScoreWords.of(line, plan))
        .isEqualTo(
            "Equipment changes: 10 items taken up or put away: "
                + ScoreWords.points(-10 * line.weight()));
    assertThat(ScoreWords.points(12)).isEqualTo("+12");
    assertThat(ScoreWords.points(0)).isEqualTo("0");
    assertThatIllegalArgumentException().isThrownBy(() -> ScoreWords.constraint("nonsense"));
  }

  @Test
  void faultsNameThePlaceTheExercisesTheRuleAndTheRemedy() {
    Plan plan = Plans.broken();
    List<String> lines =
        plan.matches().stream().map(match -> FaultWords.of(match, plan, Plans.CATALOGUE)).toList();
    assertThat(lines)
        .contains(
            "1A to 1B: 23 s too long for the changeover: Goblet squat to Ankle-weight side-lying leg raise (28 s"
                + " needed, 5 s there). Maybe swap one of them, change their order, or lengthen the pause.",
            "1A: Goblet squat goes against sore knees (knee demand 2, at most 1, deep-knee-flexion). Swap it.",
            "1B: Ankle-weight side-lying leg raise needs ankle weights, not among the equipment. Maybe swap it, or list"
                + " the equipment.",
            "4A: Rear-foot-raised split squat is level 3, above level 2. Maybe swap it, or raise the level.",
            "Hamstrings: 0 of 1 direct sets. Maybe more minutes, fewer targets, or more equipment.",
            "Superset 3: not full, although the clock has room for it. Maybe more equipment, fewer limitations, or"
                + " fewer exclusions.",
            "Loop band: listed, and no exercise uses it. Maybe leave it out, or add a target that it trains.");
  }
}

package counterset.score;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.WeekProblem;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a problem makes of the constraints of a week. */
class WeekConstraintTest {

  private static final WeekProblem PLAIN = problem(false, Map.of());
  private static final WeekProblem RULE = problem(true, Map.of());

  private static WeekProblem problem(boolean recoveryIsRule, Map<String, Integer> weights) {
    return new WeekProblem("Test", List.of(), List.of(), Map.of(), recoveryIsRule, weights, 1);
  }

  private static Rule rule(Class<? extends DayConstraint> constraint, WeekProblem problem) {
    return Constraints.weekly(constraint).rule(problem);
  }

  @Test
  void levelsAndWeightsAreAsTheDesignHasThem() {
    assertThat(rule(WeekFrequency.class, PLAIN).level()).isEqualTo(Level.MEDIUM);
    assertThat(rule(WeekFrequency.class, PLAIN).perUnit()).isEqualTo(-1);
    assertThat(rule(RecoveryShort.class, PLAIN).level()).isEqualTo(Level.SOFT);
    assertThat(rule(RecoveryShort.class, PLAIN).perUnit()).isEqualTo(-25);
    assertThat(rule(WeeklyVolume.class, PLAIN).perUnit()).as("8 for a set").isEqualTo(-8 / 2);
    assertThat(rule(WeekRepeated.class, PLAIN).perUnit()).isEqualTo(-1);
  }

  @Test
  void recoveryCanBeARule() {
    assertThat(rule(RecoveryShort.class, RULE).level()).isEqualTo(Level.HARD);
    assertThat(rule(RecoveryShort.class, RULE).perUnit()).isEqualTo(-1);
    assertThat(rule(WeeklyVolume.class, RULE).level()).isEqualTo(Level.SOFT);
  }

  @Test
  void aProblemMayWeighOtherwise() {
    WeekProblem problem = problem(true, Map.of("recoveryShort", 3, "weeklyVolume", 0));
    assertThat(rule(RecoveryShort.class, problem).perUnit()).isEqualTo(-3);
    assertThat(rule(WeeklyVolume.class, problem).perUnit()).isZero();
  }
}

package counterset.planning.constraints;

import static counterset.planning.constraints.WeekConstraint.*;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.WeekProblem;
import counterset.planning.constraints.SessionConstraint.Level;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** One name in three places: the method that defines a constraint, its id, its tests. */
class WeekConstraintTest {

  private static final WeekProblem PLAIN = problem(false, Map.of());
  private static final WeekProblem RULE = problem(true, Map.of());

  private static WeekProblem problem(boolean recoveryIsRule, Map<String, Integer> weights) {
    return new WeekProblem("Test", List.of(), List.of(), Map.of(), recoveryIsRule, weights, 1);
  }

  @ParameterizedTest
  @EnumSource(WeekConstraint.class)
  void theIdNamesTheMethodAndTheTests(WeekConstraint constraint) {
    assertThat(methods(LoadConstraints.class, VarietyConstraints.class))
        .filteredOn(name -> name.equals(constraint.id()))
        .hasSize(1);
    assertThat(methods(LoadConstraintsTest.class, VarietyConstraintsTest.class))
        .filteredOn(name -> name.startsWith(constraint.id()))
        .isNotEmpty();
    assertThat(constraint.sentence()).endsWith(".");
    assertThat(constraint.unit()).isNotBlank();
  }

  private static List<String> methods(Class<?>... types) {
    return Stream.of(types)
        .flatMap(type -> Arrays.stream(type.getDeclaredMethods()))
        .filter(method -> !method.isSynthetic())
        .map(Method::getName)
        .toList();
  }

  @Test
  void levelsAndWeightsAreAsTheDesignHasThem() {
    assertThat(WEEK_FREQUENCY.level(PLAIN)).isEqualTo(Level.MEDIUM);
    assertThat(WEEK_FREQUENCY.weight(PLAIN)).isEqualTo(1);
    assertThat(RECOVERY_SHORT.level(PLAIN)).isEqualTo(Level.SOFT);
    assertThat(RECOVERY_SHORT.weight(PLAIN)).isEqualTo(25);
    assertThat(WEEKLY_VOLUME.weight(PLAIN)).as("8 for a set").isEqualTo(8 / 2);
    assertThat(WEEK_REPEATED.weight(PLAIN)).isEqualTo(1);
  }

  @Test
  void recoveryCanBeARule() {
    assertThat(RECOVERY_SHORT.level(RULE)).isEqualTo(Level.HARD);
    assertThat(RECOVERY_SHORT.weight(RULE)).isEqualTo(1);
    assertThat(RECOVERY_SHORT.points(RULE, 2).hardScore()).isEqualTo(2);
    assertThat(RECOVERY_SHORT.isOverridden(RULE)).isTrue();
    assertThat(WEEKLY_VOLUME.level(RULE)).isEqualTo(Level.SOFT);
    assertThat(WEEKLY_VOLUME.isOverridden(RULE)).isFalse();
  }

  @Test
  void aProblemMayWeighOtherwise() {
    WeekProblem problem = problem(true, Map.of("recoveryShort", 3, "weeklyVolume", 0));
    assertThat(RECOVERY_SHORT.weight(problem)).isEqualTo(3);
    assertThat(WEEKLY_VOLUME.weight(problem)).isZero();
    assertThat(WEEKLY_VOLUME.isOverridden(problem)).isTrue();
    assertThat(WEEK_REPEATED.isOverridden(problem)).isFalse();
  }
}

package counterset.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class GoalTest {

  @Test
  void ofTheSpanIsOnePercentOfTheWayFromChanceShortOfTheBest() {
    assertThat(Goal.ofSpan(new Points(0, 60), -440)).isEqualTo(new Points(0, 55));
    assertThat(Goal.ofSpan(new Points(-2, -60), -259)).isEqualTo(new Points(-2, -61));
  }

  @Test
  void ofTheSpanIsTheBestItselfIfThatIsNoBetterThanChance() {
    assertThat(Goal.ofSpan(new Points(0, 60), 60)).isEqualTo(new Points(0, 60));
    assertThat(Goal.ofSpan(new Points(0, 60), 500)).isEqualTo(new Points(0, 60));
  }

  @Test
  void ofTheNumberTakesAPercentOfItsSize() {
    assertThat(Goal.ofNumber(new Points(0, 250))).isEqualTo(new Points(0, 248));
    assertThat(Goal.ofNumber(new Points(0, 99))).isEqualTo(new Points(0, 99));
    assertThat(Goal.ofNumber(new Points(-1, -100))).isEqualTo(new Points(-1, -101));
  }

  @Test
  void mediumPointsComeFirst() {
    assertThat(new Points(0, -500)).isGreaterThan(new Points(-1, 500));
    assertThat(new Points(-1, 3).orBetter(new Points(-1, 4))).isEqualTo(new Points(-1, 4));
  }
}

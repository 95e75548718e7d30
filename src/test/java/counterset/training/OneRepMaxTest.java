package counterset.training;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Epley: w (1 + r / 30). Brzycki: w x 36 / (37 - r). The figures are computed from these; the
 * formulas were seen in secondary sources (LeSuer 1997 compares them).
 */
class OneRepMaxTest {

  @ParameterizedTest
  @CsvSource({
    "1, 103.33, 100.00",
    "3, 110.00, 105.88",
    "5, 116.67, 112.50",
    "8, 126.67, 124.14",
    "10, 133.33, 133.33",
    "12, 140.00, 144.00",
    "15, 150.00, 163.64",
  })
  void hundredKilograms(int reps, double epley, double brzycki) {
    OneRepMax max = OneRepMax.of(100, reps);
    assertThat(max.epley()).isCloseTo(epley, within(0.005));
    assertThat(max.brzycki()).isCloseTo(brzycki, within(0.005));
  }

  /** r^2 - 7r - 30 = 0 has the one positive root 10. */
  @Property
  void theyAgreeAtTenAndCrossThere(
      @ForAll @DoubleRange(min = 0.5, max = 200) double kg,
      @ForAll @IntRange(min = 1, max = 15) int reps) {
    OneRepMax max = OneRepMax.of(kg, reps);
    if (reps == 10) {
      assertThat(max.epley()).isCloseTo(max.brzycki(), within(1e-9));
    } else {
      assertThat(max.epley() > max.brzycki()).isEqualTo(reps < 10);
    }
  }

  /** Brzycki meets O'Conner, w (1 + r / 40), at 5: r^2 + 3r - 40 = 0. */
  @Property
  void brzyckiMeetsOConnerAtFive(@ForAll @DoubleRange(min = 0.5, max = 200) double kg) {
    assertThat(OneRepMax.of(kg, 5).brzycki()).isCloseTo(kg * 1.125, within(1e-9));
  }

  @Property
  void moreRepetitionsOrMoreMassIsMore(
      @ForAll @DoubleRange(min = 0.5, max = 200) double kg,
      @ForAll @IntRange(min = 1, max = 14) int reps) {
    OneRepMax max = OneRepMax.of(kg, reps);
    OneRepMax more = OneRepMax.of(kg, reps + 1);
    assertThat(more.epley()).isGreaterThan(max.epley());
    assertThat(more.brzycki()).isGreaterThan(max.brzycki());
    assertThat(OneRepMax.of(2 * kg, reps).epley()).isCloseTo(2 * max.epley(), within(1e-9));
    assertThat(OneRepMax.of(2 * kg, reps).brzycki()).isCloseTo(2 * max.brzycki(), within(1e-9));
  }

  @Property
  void turnedRoundTheyGiveTheRepetitionsBack(
      @ForAll @DoubleRange(min = 0.5, max = 200) double kg,
      @ForAll @IntRange(min = 1, max = 15) int reps) {
    OneRepMax max = OneRepMax.of(kg, reps);
    assertThat(max.fewestReps(kg)).isEqualTo(reps);
    assertThat(max.mostReps(kg)).isEqualTo(reps);
  }

  /**
   * 45 kg x 10 is 60 kg: Epley and Brzycki at 10 repetitions say 75 % exactly, as does the NSCA's
   * chart of repetitions and percentages (seen in a secondary source).
   */
  @Test
  void tenRepetitionsAreThreeQuarters() {
    assertThat(OneRepMax.of(45, 10).low()).isCloseTo(60, within(1e-9));
    assertThat(OneRepMax.of(45, 10).high()).isCloseTo(60, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(ints = {Integer.MIN_VALUE, -1, 0, 16, 37, 40})
  void outOfRange(int reps) {
    assertThat(OneRepMax.covers(reps)).isFalse();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OneRepMax.of(10, reps))
        .withMessage("The repetitions (" + reps + ") must be 1 to 15.");
  }

  @Test
  void aLoadBeyondTheEstimateLeavesNoRepetition() {
    assertThat(OneRepMax.of(6, 14).fewestReps(10)).isZero();
    assertThat(OneRepMax.of(6, 14).mostReps(20)).isZero();
  }
}

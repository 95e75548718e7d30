package counterset.training;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterset.fixture.Entries;
import counterset.journal.EnergyBlock;
import counterset.journal.Entry;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * MET x 3.5 x kg / 200 a minute (ACSM's Guidelines for Exercise Testing and Prescription, metabolic
 * calculations; the page from memory). Figures computed from that formula.
 */
class EnergyTest {

  private static EnergyBlock block(String part, int minutes, double met) {
    return new EnergyBlock(part, 60 * minutes, met, List.of());
  }

  private static Entry entry(OptionalDouble mass, EnergyBlock... blocks) {
    return Entries.burned("2026-03-08", mass, blocks);
  }

  @ParameterizedTest
  @CsvSource({
    "2.3, 56.35",
    "3.0, 73.50",
    "3.5, 85.75",
    "5.0, 122.50",
    "5.8, 142.10",
    "6.0, 147.00",
  })
  void twentyMinutesAtSeventyKilograms(double met, double kcal) {
    Entry entry = entry(OptionalDouble.empty(), block("supersets", 20, met));
    assertThat(Energy.metMinutes(entry)).isCloseTo(20 * met, within(1e-9));
    assertThat(Energy.kcal(Energy.metMinutes(entry), 70)).isCloseTo(kcal, within(1e-9));
  }

  /** 3 min at 2.8, 14 min at 5.8, 3 min at 2.3: 10.29 + 99.47 + 8.4525. */
  @Test
  void partsAddUp() {
    Entry entry =
        entry(
            OptionalDouble.empty(),
            block("warm-up", 3, 2.8),
            block("supersets", 14, 5.8),
            block("cool-down", 3, 2.3));
    assertThat(Energy.kcal(Energy.metMinutes(entry), 70)).isCloseTo(118.2125, within(1e-9));
  }

  /** The other convention, 1 kcal a kilogram and hour, gives less by exactly 1.05. */
  @Test
  void whichConventionItIs() {
    assertThat(Energy.kcal(20 * 5.8, 70) / (5.8 * 70 * 20 / 60)).isCloseTo(1.05, within(1e-12));
  }

  @Test
  void sessionsWithoutAMassAreCountedAndTold() {
    Week week =
        new Week(
            LocalDate.of(2026, 3, 8),
            List.of(
                entry(OptionalDouble.of(70), block("supersets", 20, 5)),
                entry(OptionalDouble.empty(), block("supersets", 20, 5))));
    assertThat(EnergyTotal.of(week, OptionalDouble.empty()))
        .isEqualTo(new EnergyTotal(200, 122.5, 2, 1));
    assertThat(EnergyTotal.of(week, OptionalDouble.of(80)))
        .isEqualTo(new EnergyTotal(200, 122.5 + 140, 2, 2));
  }
}

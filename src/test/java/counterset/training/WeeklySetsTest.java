package counterset.training;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.Entries;
import counterset.journal.Entry;
import counterset.journal.MuscleSets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeeklySetsTest {

  private static final LocalDate SUNDAY = LocalDate.of(2026, 3, 8);

  private static MuscleSets sets(String muscle, int direct, int indirect) {
    return new MuscleSets(muscle, direct, indirect);
  }

  /**
   * Fractional counting (Pelland 2024): 4 lunges (quadriceps and gluteus maximus direct, hamstrings
   * indirect), 3 bridges (gluteus maximus direct, hamstrings indirect), 3 step-ups (quadriceps and
   * gluteus maximus direct) make 7, 10 and 3.5 sets; computed from the rule.
   */
  @Test
  void anIndirectSetIsHalfASet() {
    List<Entry> entries =
        List.of(
            Entries.trained(
                "2026-03-02",
                sets("quadriceps", 4, 0),
                sets("gluteus-maximus", 4, 0),
                sets("hamstrings", 0, 4)),
            Entries.trained("2026-03-04", sets("gluteus-maximus", 3, 0), sets("hamstrings", 0, 3)),
            Entries.trained("2026-03-06", sets("quadriceps", 3, 0), sets("gluteus-maximus", 3, 0)));
    List<WeeklySets> week =
        WeeklySets.of(
            new Week(SUNDAY, entries), List.of("quadriceps", "gluteus-maximus", "hamstrings"));
    assertThat(week)
        .containsExactly(
            new WeeklySets("quadriceps", 7, 0, 2),
            new WeeklySets("gluteus-maximus", 10, 0, 3),
            new WeeklySets("hamstrings", 0, 7, 0));
    assertThat(week).extracting(WeeklySets::sets).containsExactly(7.0, 10.0, 3.5);
    assertThat(week)
        .extracting(WeeklySets::range)
        .containsExactly(SetRange.MIDDLE, SetRange.HIGH, SetRange.BELOW_LEAST);
  }

  @Test
  void groupsThatNobodyAskedForFollowAndOtherWeeksDoNotCount() {
    Week week =
        new Week(
            SUNDAY,
            List.of(
                Entries.trained("2026-03-01", sets("calves", 9, 0)),
                Entries.trained("2026-03-02", sets("shins", 1, 0), sets("calves", 0, 0)),
                Entries.trained("2026-03-02", sets("shins", 1, 1))));
    assertThat(WeeklySets.of(week, List.of("calves")))
        .containsExactly(new WeeklySets("calves", 0, 0, 0), new WeeklySets("shins", 2, 1, 1));
  }

  /** At least 4: Iversen 2021. Below 5, 5 to 9, 10 and more: Schoenfeld 2017. */
  @ParameterizedTest
  @CsvSource({
    "0, NONE",
    "0.5, BELOW_LEAST",
    "3.5, BELOW_LEAST",
    "4, LEAST",
    "4.5, LEAST",
    "5, MIDDLE",
    "9, MIDDLE",
    "9.5, MIDDLE",
    "10, HIGH",
    "40, HIGH",
  })
  void publishedRanges(double sets, SetRange range) {
    assertThat(SetRange.of(sets)).isEqualTo(range);
  }
}

package counterset.training;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterset.fixture.Entries;
import counterset.journal.Entry;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Foster's arithmetic (Foster 1998, Med Sci Sports Exerc 30(7):1164-1168; Foster 2001, J Strength
 * Cond Res 15(1):109-115). The papers' own example weeks were not at hand; these figures are
 * computed from the definitions.
 */
class WeekTest {

  private static final LocalDate SUNDAY = LocalDate.of(2026, 3, 8);

  /** A week of sessions of one minute times ten, so that any load can be had. */
  private static Week week(List<Double> daily) {
    List<Entry> entries = new ArrayList<>();
    for (int day = 0; day < 7; day++) {
      double load = daily.get(day);
      if (load > 0) {
        entries.add(Entries.rated(SUNDAY.minusDays(6 - day).toString(), (int) load / 5, 5));
      }
    }
    return new Week(SUNDAY, entries);
  }

  private static List<Double> numbers(String text) {
    return Stream.of(text.split(" ")).map(Double::valueOf).toList();
  }

  @Test
  void sessionLoadIsRpeTimesMinutes() {
    assertThat(SessionLoad.of(Entries.rated("2026-03-02", 20, 6))).isEqualTo(120);
    assertThat(SessionLoad.of(Entries.rated("2026-03-02", 20, 4.5))).isEqualTo(90);
    assertThat(SessionLoad.of(Entries.rated("2026-03-02", 45, 0))).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "120 0 100 0 120 0 0, 340, 0.8608, 292.68",
    "100 0 120 0 100 90 0, 410, 1.1398, 467.31",
    "300 420 180 360 240 480 0, 1980, 1.8927, 3747.51",
    "200 200 200 200 200 200 0, 1200, 2.4495, 2939.39",
    "200 200 200 0 0 0 0, 600, 0.8660, 519.62",
  })
  void monotonyAndStrain(String daily, double load, double monotony, double strain) {
    Week week = week(numbers(daily));
    assertThat(week.daily()).isEqualTo(numbers(daily));
    assertThat(week.load()).isEqualTo(load);
    assertThat(week.monotony().orElseThrow()).isCloseTo(monotony, within(0.00005));
    assertThat(week.strain().orElseThrow()).isCloseTo(strain, within(0.005));
  }

  /** Closed form: k equal days of 7 give a population monotony of sqrt(k / (7 - k)). */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6})
  void equalDays(int k) {
    List<Double> daily = new ArrayList<>();
    for (int day = 0; day < 7; day++) {
      daily.add(day < k ? 150.0 : 0.0);
    }
    assertThat(week(daily).monotony().orElseThrow())
        .isCloseTo(Math.sqrt(k / (7.0 - k)), within(1e-12));
  }

  @Test
  void monotonyHasNoScaleAndStrainIsLinear() {
    Week once = week(numbers("120 0 100 0 120 0 0"));
    Week twice = week(numbers("240 0 200 0 240 0 0"));
    assertThat(twice.monotony().orElseThrow())
        .isCloseTo(once.monotony().orElseThrow(), within(1e-12));
    assertThat(twice.strain().orElseThrow())
        .isCloseTo(2 * once.strain().orElseThrow(), within(1e-9));
  }

  @Test
  void daysThatAreAllTheSameHaveNoMonotony() {
    Week even = week(numbers("100 100 100 100 100 100 100"));
    assertThat(even.load()).isEqualTo(700);
    assertThat(even.monotony()).isEmpty();
    assertThat(even.strain()).isEmpty();
    assertThat(new Week(SUNDAY, List.of()).monotony()).isEmpty();
  }

  @Test
  void twoSessionsOfADayAddUp() {
    Week week =
        new Week(
            SUNDAY,
            List.of(Entries.rated("2026-03-08", 20, 5), Entries.rated("2026-03-08", 10, 3)));
    assertThat(week.daily()).containsExactly(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 130.0);
    assertThat(week.minutes()).isEqualTo(30);
  }

  @Test
  void aWeekHasSevenDaysBothEndsIncluded() {
    Week week =
        new Week(
            SUNDAY,
            List.of(
                Entries.rated("2026-03-01", 20, 1),
                Entries.rated("2026-03-02", 20, 2),
                Entries.rated("2026-03-08", 20, 3),
                Entries.rated("2026-03-09", 20, 4)));
    assertThat(week.first()).isEqualTo("2026-03-02");
    assertThat(week.entries()).extracting(Entry::rpe).containsExactly(2.0, 3.0);
  }
}

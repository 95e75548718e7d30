package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
import static counterset.fixture.WeekBuilder.week;
import static counterset.score.WeekCheck.costs;
import static counterset.score.WeekCheck.silent;
import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SUNDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.DayOfWeek.TUESDAY;
import static java.time.DayOfWeek.WEDNESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.ExerciseBuilder;
import counterset.fixture.FilledWeek;
import counterset.fixture.WeekBuilder;
import counterset.model.Exercise;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadConstraintsTest {

  private static final String QUADS = "quadriceps";

  private final Exercise curl = exercise("curl").withPrimary("biceps").build();
  private final Exercise row =
      exercise("row").withPrimary("upper-back").withSecondary("biceps").build();

  /** So many sets for the quadriceps. */
  private static Exercise[] squats(int sets) {
    return Collections.nCopies(sets, ExerciseBuilder.plain("squat")).toArray(Exercise[]::new);
  }

  /**
   * At least 48 h between sessions for a muscle group: Garber et al., ACSM position stand, Med Sci
   * Sports Exerc 43 (2011) 1334-1359, table 2. Two days apart is 48 h to the hour.
   */
  @Test
  void recoveryShortWantsFortyEightHours() {
    costs(RecoveryShort.class, 1, week().on(MONDAY, squats(3)).on(TUESDAY, squats(3)));
    costs(RecoveryShort.class, 1, week().on(TUESDAY, squats(3)).on(MONDAY, squats(4)));
    silent(RecoveryShort.class, week().on(MONDAY, squats(3)).on(WEDNESDAY, squats(3)));
    silent(RecoveryShort.class, week().on(MONDAY, squats(3)).on(SUNDAY, squats(3)));
    costs(
        RecoveryShort.class,
        2,
        week().on(MONDAY, squats(3)).on(TUESDAY, squats(3)).on(WEDNESDAY, squats(3)));
  }

  /** That 3 sets are enough to ask for recovery is common practice, no source. */
  @Test
  void recoveryShortLooksAtThreeDirectSetsOrMore() {
    silent(RecoveryShort.class, week().on(MONDAY, squats(2)).on(TUESDAY, squats(3)));
    silent(RecoveryShort.class, week().on(MONDAY, curl, curl, curl).on(TUESDAY, row, row, row));
    costs(RecoveryShort.class, 1, week().rounds(3).on(MONDAY, curl).on(TUESDAY, curl));
    silent(RecoveryShort.class, week().rounds(2).on(MONDAY, curl).on(TUESDAY, curl));
  }

  @Test
  void recoveryShortCountsEachMuscleGroup() {
    Exercise lunge = exercise("lunge").withPrimary(QUADS, "gluteus-maximus").build();
    costs(
        RecoveryShort.class,
        2,
        week().on(MONDAY, lunge, lunge, lunge).on(TUESDAY, lunge, lunge, lunge));
  }

  @Test
  void recoveryShortCountsBothSidesOnce() {
    Exercise side = oneSided("side");
    silent(RecoveryShort.class, week().on(MONDAY, side, side).on(TUESDAY, squats(3)));
    costs(RecoveryShort.class, 1, week().on(MONDAY, side, side, side).on(TUESDAY, squats(3)));
  }

  @Test
  void recoveryShortReachesAcrossTheEdgeOfTheWeek() {
    costs(RecoveryShort.class, 1, week().before(1, Map.of(QUADS, 3)).on(MONDAY, squats(3)));
    silent(RecoveryShort.class, week().before(1, Map.of(QUADS, 2)).on(MONDAY, squats(3)));
    silent(RecoveryShort.class, week().before(2, Map.of(QUADS, 3)).on(MONDAY, squats(3)));
    silent(RecoveryShort.class, week().before(1, Map.of(QUADS, 3)).on(TUESDAY, squats(3)));
    silent(RecoveryShort.class, week().before(1, Map.of("biceps", 3)).on(MONDAY, squats(3)));
  }

  /**
   * At least 4 weekly sets: Iversen et al., "No time to lift?", Sports Med 51 (2021) 2079-2095. The
   * most is common practice, no source.
   */
  @ParameterizedTest
  @CsvSource({"0, 8", "3, 2", "4, 0", "12, 0", "13, 2", "15, 6"})
  void weeklyVolumeHasARangeByDefault(int sets, int halfSetsOutside) {
    costs(
        WeeklyVolume.class,
        halfSetsOutside,
        week().targets(MONDAY, QUADS).defaultRange(QUADS).on(MONDAY, squats(sets)));
  }

  @Test
  void weeklyVolumeAddsTheDaysAndCountsIndirectSetsHalf() {
    silent(WeeklyVolume.class, week().range("biceps", 2, 3).on(MONDAY, curl, row).on(TUESDAY, row));
    costs(WeeklyVolume.class, 1, week().range("biceps", 2, 3).on(MONDAY, row, row).on(FRIDAY, row));
    costs(WeeklyVolume.class, 1, week().range("biceps", 1, 1).on(MONDAY, curl).on(FRIDAY, row));
    costs(WeeklyVolume.class, 3, week().rounds(3).range("biceps", 0, 0).on(MONDAY, row));
    silent(WeeklyVolume.class, week().range("biceps", 0, 0).on(MONDAY, squats(5)));
  }

  /**
   * Fractional counting (Pelland et al., SportRxiv 2024): 4 lunges, 3 bridges and 3 step-ups come
   * to 7 sets for the quadriceps, 10 for the gluteus maximus and 3.5 for the hamstrings.
   */
  @Test
  void weeklyVolumeCountsFractions() {
    Exercise lunge =
        exercise("lunge").withPrimary(QUADS, "gluteus-maximus").withSecondary("hamstrings").build();
    Exercise bridge =
        exercise("bridge").withPrimary("gluteus-maximus").withSecondary("hamstrings").build();
    Exercise stepUp = exercise("step-up").withPrimary(QUADS, "gluteus-maximus").build();
    FilledWeek week =
        week()
            .targets(MONDAY, QUADS, "gluteus-maximus", "hamstrings")
            .on(MONDAY, lunge, bridge, lunge, stepUp)
            .on(WEDNESDAY, lunge, bridge, stepUp)
            .on(FRIDAY, lunge, bridge, stepUp)
            .filled();
    assertThat(halfSets(week, QUADS)).isEqualTo(14);
    assertThat(halfSets(week, "gluteus-maximus")).isEqualTo(20);
    assertThat(halfSets(week, "hamstrings")).isEqualTo(7);
  }

  private static int halfSets(FilledWeek week, String muscle) {
    WeekTarget target =
        week.facts().targets().stream()
            .filter(each -> each.muscle().equals(muscle))
            .findFirst()
            .orElseThrow();
    List<Integer> byDay = WeekLedger.halfSetsByDay(week.facts(), week.places(), target.muscle());
    return byDay.stream().mapToInt(Integer::intValue).sum();
  }

  /**
   * Two days a week or more for all major muscle groups: WHO guidelines on physical activity and
   * sedentary behaviour, 2020 (Bull et al., Br J Sports Med 54 (2020) 1451-1462).
   */
  @Test
  void weekFrequencyWantsTwoDays() {
    silent(WeekFrequency.class, asked().on(MONDAY, squats(1)).on(THURSDAY, squats(1)));
    costs(WeekFrequency.class, 1, asked().on(MONDAY, squats(5)).on(THURSDAY, curl));
    costs(WeekFrequency.class, 2, asked().on(MONDAY, curl).on(THURSDAY, row));
    costs(WeekFrequency.class, 2, asked().on(MONDAY).on(THURSDAY));
  }

  @Test
  void weekFrequencyCountsDirectSetsOfAnySession() {
    silent(WeekFrequency.class, asked().on(MONDAY, squats(1)).on(THURSDAY).on(FRIDAY, squats(1)));
    Exercise helped = exercise("helped").withPrimary("calves").withSecondary(QUADS).build();
    costs(WeekFrequency.class, 1, asked().on(MONDAY, squats(1)).on(THURSDAY, helped));
  }

  @Test
  void weekFrequencyAsksNothingOfTheTargetOfOneSession() {
    silent(WeekFrequency.class, week().targets(MONDAY, QUADS).on(MONDAY, curl).on(THURSDAY, row));
  }

  private static WeekBuilder asked() {
    return week().targets(MONDAY, QUADS).targets(THURSDAY, QUADS);
  }
}

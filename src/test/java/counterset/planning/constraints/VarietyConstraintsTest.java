package counterset.planning.constraints;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.WeekBuilder.week;
import static counterset.planning.constraints.WeekCheck.costs;
import static counterset.planning.constraints.WeekCheck.silent;
import static counterset.planning.constraints.WeekConstraint.WEEK_REPEATED;
import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.SATURDAY;
import static java.time.DayOfWeek.SUNDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.DayOfWeek.TUESDAY;

import counterset.model.Exercise;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The points are common practice, no source. */
class VarietyConstraintsTest {

  private final Exercise a = plain("a");
  private final Exercise b = plain("b");
  private final Exercise side = oneSided("side");
  private final Exercise variant =
      exercise("variant").withVariantOf("a").withFamily("a-family").build();
  private final Exercise cousin = exercise("cousin").withFamily("a-family").build();

  @Test
  void weekRepeatedCountsPairsOfSessions() {
    silent(WEEK_REPEATED, week().on(MONDAY, a).on(THURSDAY, b));
    silent(WEEK_REPEATED, week().on(MONDAY, a, a));
    costs(WEEK_REPEATED, 12, week().on(MONDAY, a, b).on(THURSDAY, a));
    costs(WEEK_REPEATED, 12, week().on(SUNDAY, a).on(MONDAY, a));
    costs(WEEK_REPEATED, 36, week().on(MONDAY, a).on(THURSDAY, a).on(SATURDAY, a));
    costs(WEEK_REPEATED, 24, week().on(MONDAY, a, side).on(FRIDAY, side, a));
  }

  @Test
  void weekRepeatedTakesAVariantForTheSameExercise() {
    costs(WEEK_REPEATED, 12, week().on(MONDAY, a).on(THURSDAY, variant));
    costs(WEEK_REPEATED, 12, week().on(MONDAY, a, variant).on(THURSDAY, a, variant));
  }

  @Test
  void weekRepeatedCountsFamiliesOnNeighbouringDays() {
    costs(WEEK_REPEATED, 4, week().on(MONDAY, a).on(TUESDAY, cousin));
    costs(WEEK_REPEATED, 4, week().on(TUESDAY, a).on(MONDAY, cousin));
    silent(WEEK_REPEATED, week().on(MONDAY, a).on(THURSDAY, cousin));
    silent(WEEK_REPEATED, week().on(MONDAY, a).on(SUNDAY, cousin));
    costs(WEEK_REPEATED, 16, week().on(MONDAY, a).on(TUESDAY, a));
  }

  @ParameterizedTest
  @CsvSource({"1, 12", "10, 12", "11, 0", "20, 0"})
  void weekRepeatedReachesBackTwoWeeks(int daysBeforeMonday, int points) {
    costs(WEEK_REPEATED, points, week().before(daysBeforeMonday, Map.of(), "a").on(THURSDAY, a));
  }

  @Test
  void weekRepeatedCountsFamiliesOfTheSundayBefore() {
    costs(WEEK_REPEATED, 4 + 12, week().before(1, Map.of(), "cousin").on(MONDAY, a, cousin));
    silent(WEEK_REPEATED, week().before(2, Map.of(), "cousin").on(MONDAY, a));
  }

  @Test
  void weekRepeatedPassesOverWhatTheCatalogueDoesNotKnow() {
    silent(WEEK_REPEATED, week().before(1, Map.of(), "gone").on(MONDAY, a));
  }
}

package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.WeekBuilder.week;
import static counterset.score.WeekCheck.costs;
import static counterset.score.WeekCheck.silent;
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
    silent(WeekRepeated.class, week().on(MONDAY, a).on(THURSDAY, b));
    silent(WeekRepeated.class, week().on(MONDAY, a, a));
    costs(WeekRepeated.class, 12, week().on(MONDAY, a, b).on(THURSDAY, a));
    costs(WeekRepeated.class, 12, week().on(SUNDAY, a).on(MONDAY, a));
    costs(WeekRepeated.class, 36, week().on(MONDAY, a).on(THURSDAY, a).on(SATURDAY, a));
    costs(WeekRepeated.class, 24, week().on(MONDAY, a, side).on(FRIDAY, side, a));
  }

  @Test
  void weekRepeatedTakesAVariantForTheSameExercise() {
    costs(WeekRepeated.class, 12, week().on(MONDAY, a).on(THURSDAY, variant));
    costs(WeekRepeated.class, 12, week().on(MONDAY, a, variant).on(THURSDAY, a, variant));
  }

  @Test
  void weekRepeatedCountsFamiliesOnNeighbouringDays() {
    costs(WeekRepeated.class, 4, week().on(MONDAY, a).on(TUESDAY, cousin));
    costs(WeekRepeated.class, 4, week().on(TUESDAY, a).on(MONDAY, cousin));
    silent(WeekRepeated.class, week().on(MONDAY, a).on(THURSDAY, cousin));
    silent(WeekRepeated.class, week().on(MONDAY, a).on(SUNDAY, cousin));
    costs(WeekRepeated.class, 16, week().on(MONDAY, a).on(TUESDAY, a));
  }

  @ParameterizedTest
  @CsvSource({"1, 12", "10, 12", "11, 0", "20, 0"})
  void weekRepeatedReachesBackTwoWeeks(int daysBeforeMonday, int points) {
    costs(
        WeekRepeated.class, points, week().before(daysBeforeMonday, Map.of(), "a").on(THURSDAY, a));
  }

  @Test
  void weekRepeatedCountsFamiliesOfTheSundayBefore() {
    costs(WeekRepeated.class, 4 + 12, week().before(1, Map.of(), "cousin").on(MONDAY, a, cousin));
    silent(WeekRepeated.class, week().before(2, Map.of(), "cousin").on(MONDAY, a));
  }

  @Test
  void weekRepeatedPassesOverWhatTheCatalogueDoesNotKnow() {
    silent(WeekRepeated.class, week().before(1, Map.of(), "gone").on(MONDAY, a));
  }
}

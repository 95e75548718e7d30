package counterset.search;

import static counterset.fixture.ExerciseBuilder.exercise;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.ExerciseBuilder;
import counterset.fixture.Problems;
import counterset.fixture.Trade;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Part;
import counterset.model.Position;
import counterset.model.Region;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which stretches end a session, with the small trade: every stretch takes 30 s and stands unless
 * said otherwise. Sets are counted as in the coverage: a primary muscle group one, a secondary one
 * half (Schoenfeld and others count so; from memory).
 */
class CoolDownChoiceTest {

  /** Sets: hamstrings 2, calves 1.5, quadriceps 1, chest .5. */
  private static final List<Exercise> WORK =
      List.of(
          exercise("one").withPrimary("hamstrings").withSecondary("calves", "chest").build(),
          exercise("two").withPrimary("hamstrings", "calves").build(),
          exercise("three").withPrimary("quadriceps").build());

  private static ExerciseBuilder stretch(String id, String... muscles) {
    return exercise(id).withPart(Part.COOL_DOWN).withSeconds(30).withPrimary(muscles);
  }

  private static List<String> chosen(
      int seconds, List<Exercise> work, ExerciseBuilder... stretches) {
    List<Exercise> all = new ArrayList<>(work);
    for (ExerciseBuilder stretch : stretches) {
      all.add(stretch.build());
    }
    List<Superset> supersets = new ArrayList<>();
    for (Exercise exercise : work) {
      supersets.add(new Superset(supersets.size() + 1, List.of(exercise)));
    }
    Problems problems =
        Problems.of(Trade.of(all), Region.LOWER)
            .clock(new Intervals(10, 0, 45, 0, 30, seconds, 2, 1));
    return new Surroundings(problems.problem(), Trade.of(all))
        .around(supersets).coolDown().stream().map(Exercise::id).toList();
  }

  private static List<String> chosen(int seconds, ExerciseBuilder... stretches) {
    return chosen(seconds, WORK, stretches);
  }

  @ParameterizedTest
  @CsvSource({
    "29, ''",
    "30, hamstrings",
    "59, hamstrings",
    "60, calves hamstrings",
    "90, calves hamstrings quadriceps",
    "119, calves hamstrings quadriceps",
    "120, calves chest hamstrings quadriceps",
    "300, calves chest hamstrings quadriceps"
  })
  void musclesWithMostSetsComeFirstAndNoneThatRested(int seconds, String muscles) {
    List<String> chosen =
        chosen(
            seconds,
            stretch("triceps", "triceps"),
            stretch("chest", "chest"),
            stretch("quadriceps", "quadriceps"),
            stretch("calves", "calves"),
            stretch("hamstrings", "hamstrings"));
    assertThat(chosen.stream().sorted()).containsExactly(split(muscles));
  }

  private static String[] split(String words) {
    return words.isEmpty() ? new String[0] : words.split(" ");
  }

  @Test
  void everyMuscleHasOneBeforeAnyHasTwo() {
    ExerciseBuilder first = stretch("first", "hamstrings");
    ExerciseBuilder second = stretch("second", "hamstrings");
    ExerciseBuilder calves = stretch("calves", "calves");
    assertThat(chosen(60, first, second, calves)).containsExactly("first", "calves");
    assertThat(chosen(90, first, second, calves)).containsExactly("first", "calves", "second");
  }

  @Test
  void oneStretchMayServeTwoMuscles() {
    ExerciseBuilder both = stretch("both", "hamstrings", "calves");
    ExerciseBuilder calves = stretch("calves", "calves");
    ExerciseBuilder front = stretch("front", "quadriceps");
    assertThat(chosen(60, both, calves, front)).containsExactly("both", "front");
  }

  @Test
  void oneStaysWhereTheSessionEnds() {
    ExerciseBuilder lying = stretch("lying", "hamstrings").withPosition(Position.SUPINE);
    ExerciseBuilder standing = stretch("standing", "hamstrings");
    assertThat(chosen(30, lying, standing)).containsExactly("standing");
    List<Exercise> down = new ArrayList<>(WORK);
    down.add(exercise("bridge").withPosition(Position.SUPINE).withPrimary("quadriceps").build());
    assertThat(chosen(30, down, standing, lying)).containsExactly("lying");
  }

  @Test
  void oneGetsUpOrDownOnceAndTurnsOverOnce() {
    ExerciseBuilder lying = stretch("lying", "hamstrings").withPosition(Position.SUPINE);
    ExerciseBuilder standing = stretch("standing", "calves");
    ExerciseBuilder prone = stretch("prone", "quadriceps").withPosition(Position.PRONE);
    ExerciseBuilder back = stretch("back", "chest").withPosition(Position.SUPINE);
    assertThat(chosen(120, lying, standing, prone, back)).startsWith("standing").hasSize(4);
    assertThat(chosen(120, lying, standing, prone, back).indexOf("prone")).isNotEqualTo(2);
    List<Exercise> down = new ArrayList<>(WORK);
    down.add(exercise("bridge").withPosition(Position.SUPINE).withPrimary("quadriceps").build());
    assertThat(chosen(120, down, standing, lying, prone, back)).endsWith("standing").hasSize(4);
  }

  @Test
  void withoutWorkThereIsNothingToStretch() {
    assertThat(chosen(300, List.of(), stretch("hamstrings", "hamstrings"))).isEmpty();
  }
}

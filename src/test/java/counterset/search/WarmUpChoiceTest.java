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
import counterset.model.Target;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which moves warm up, with the small trade: every move takes 30 s unless said otherwise, stands,
 * and has a family and a pattern of its own. The order of what counts is common practice, no
 * source.
 */
class WarmUpChoiceTest {

  private static final Exercise SQUAT =
      exercise("squat")
          .withPrimary("quadriceps", "gluteus-maximus", "hip-abductors", "hip-adductors")
          .build();
  private static final Exercise HINGE = exercise("hinge").withPrimary("hamstrings").build();
  private static final Exercise LATER = exercise("later").withPrimary("shins").build();

  private static ExerciseBuilder move(String id, String... muscles) {
    return exercise(id).withPart(Part.WARM_UP).withSeconds(30).withPrimary(muscles);
  }

  /**
   * What is chosen of moves for legs and chest, in seconds, before a superset of squats and hinges
   * and one of something later.
   */
  private static List<String> chosen(int seconds, ExerciseBuilder... moves) {
    List<Exercise> all = new ArrayList<>(List.of(SQUAT, HINGE, LATER));
    for (ExerciseBuilder move : moves) {
      all.add(move.build());
    }
    Problems problems =
        Problems.of(Trade.of(all), Region.LOWER)
            .targets(
                new Target("quadriceps", 1, 1),
                new Target("hamstrings", 1, 1),
                new Target("chest", 1, 1))
            .clock(new Intervals(10, seconds, 45, 0, 30, 0, 2, 1));
    return new Surroundings(problems.problem(), Trade.of(all))
            .around(
                List.of(
                    new Superset(1, List.of(SQUAT, HINGE)), new Superset(2, List.of(LATER, LATER))))
            .warmUp()
            .stream()
            .map(Exercise::id)
            .toList();
  }

  @Test
  void aRegionThatHasNotMovedComesBeforeAllElse() {
    ExerciseBuilder legs = move("legs", "quadriceps", "hamstrings", "gluteus-maximus");
    ExerciseBuilder chest = move("chest", "chest").withPosition(Position.SUPINE);
    assertThat(chosen(30, legs, chest)).as("three of the legs first").containsExactly("legs");
    ExerciseBuilder hips = move("hips", "hip-abductors", "hip-adductors");
    assertThat(chosen(60, hips, legs, chest))
        .as("then the chest, though it lies and does not work today")
        .containsExactly("legs", "chest");
  }

  @Test
  void aRegionThatIsNoTargetIsNoNewRegion() {
    ExerciseBuilder core = move("core", "obliques");
    ExerciseBuilder legs = move("legs", "quadriceps");
    ExerciseBuilder more = move("more", "hamstrings");
    ExerciseBuilder chest = move("chest", "chest");
    assertThat(chosen(90, core, legs, chest, more)).containsExactly("legs", "chest", "more");
  }

  @Test
  void ofOneRegionTheMoveWithMoreMusclesThatWillWork() {
    ExerciseBuilder one = move("one", "quadriceps", "calves");
    ExerciseBuilder two = move("two", "quadriceps", "hamstrings");
    assertThat(chosen(30, one, two)).containsExactly("two");
    assertThat(chosen(30, two, one)).containsExactly("two");
  }

  @Test
  void aMuscleThatHasMovedIsNotNew() {
    ExerciseBuilder first = move("first", "quadriceps", "hamstrings");
    ExerciseBuilder again = move("again", "quadriceps", "hamstrings", "calves");
    ExerciseBuilder glutes = move("glutes", "gluteus-maximus");
    assertThat(chosen(60, first, again, glutes)).containsExactly("first", "glutes");
    assertThat(chosen(60, first, glutes, again)).containsExactly("first", "glutes");
  }

  @Test
  void theFloorIsWorthTwoMusclesButNotOne() {
    ExerciseBuilder legs = move("legs", "quadriceps").withIntensity(1);
    ExerciseBuilder idle = move("idle", "calves");
    ExerciseBuilder one = move("one", "hamstrings").withPosition(Position.SUPINE);
    ExerciseBuilder two =
        move("two", "hamstrings", "gluteus-maximus").withPosition(Position.SUPINE);
    assertThat(chosen(60, legs, one, idle)).containsExactly("legs", "idle");
    assertThat(chosen(60, legs, idle, two)).containsExactly("legs", "two");
  }

  @Test
  void anotherPatternIsWorthLessThanAMuscle() {
    ExerciseBuilder first = move("first", "quadriceps").withPattern("march").withIntensity(1);
    ExerciseBuilder same = move("same", "calves").withPattern("march");
    ExerciseBuilder other = move("other", "calves").withPattern("swing");
    ExerciseBuilder muscle = move("muscle", "hamstrings").withPattern("march");
    assertThat(chosen(60, first, same, other)).containsExactly("first", "other");
    assertThat(chosen(60, first, other, muscle)).containsExactly("first", "muscle");
  }

  @Test
  void twoOfAFamilyOrTwoWaysOfOneMoveAreOneTooMany() {
    ExerciseBuilder first = move("first", "quadriceps").withFamily("knees");
    ExerciseBuilder kin = move("kin", "hamstrings").withFamily("knees");
    ExerciseBuilder variant = move("variant", "hamstrings").withVariantOf("first");
    assertThat(chosen(90, first, kin, variant)).containsExactly("first");
  }

  /** The move that rehearses is put last, whatever its intensity; its seconds are set aside. */
  @Test
  void theMoveWithThePatternOfSupersetOneComesLast() {
    ExerciseBuilder rehearsal =
        move("rehearsal", "calves").withPattern("hinge-pattern").withIntensity(1);
    ExerciseBuilder brisk = move("brisk", "quadriceps").withIntensity(3);
    ExerciseBuilder gentle = move("gentle", "chest").withIntensity(1);
    assertThat(chosen(90, rehearsal, brisk, gentle))
        .containsExactly("gentle", "brisk", "rehearsal");
    assertThat(chosen(60, rehearsal, brisk, gentle)).hasSize(2).endsWith("rehearsal");
    assertThat(chosen(30, rehearsal, brisk, gentle)).containsExactly("rehearsal");
    assertThat(chosen(29, rehearsal, brisk, gentle)).isEmpty();
  }

  @Test
  void theFirstExerciseIsRehearsedRatherThanTheSecond() {
    ExerciseBuilder hinge = move("hinging", "calves").withPattern("hinge-pattern");
    ExerciseBuilder squat = move("squatting", "calves").withPattern("squat-pattern");
    assertThat(chosen(60, hinge, squat)).containsExactly("hinging", "squatting");
  }

  @Test
  void whatComesAfterSupersetOneIsNotRehearsed() {
    ExerciseBuilder later = move("latest", "calves").withPattern("later-pattern").withIntensity(1);
    ExerciseBuilder brisk = move("brisk", "quadriceps").withIntensity(3);
    assertThat(chosen(60, later, brisk)).containsExactly("latest", "brisk");
  }

  @Test
  void marchingBeginsAmongEquallyGentleMoves() {
    ExerciseBuilder swing = move("swing", "quadriceps");
    ExerciseBuilder march = move("stride", "hamstrings").withPattern("march");
    ExerciseBuilder gentler = move("gentler", "chest").withIntensity(1);
    assertThat(chosen(90, swing, march, gentler)).containsExactly("gentler", "stride", "swing");
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "29, 0", "30, 1", "59, 1", "60, 2", "61, 2", "90, 2"})
  void movesFitToTheSecond(int seconds, int moves) {
    assertThat(chosen(seconds, move("a", "quadriceps"), move("b", "hamstrings"))).hasSize(moves);
  }
}

package counterset.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.model.Position;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Which muscle groups an exercise is for, against published rankings of muscle activity. Measured
 * values are comparable within one study only, so that each check is a rank within one of them.
 */
class MuscleRankingsTest {

  private static final Catalogue CATALOGUE = Catalogues.embedded();
  private static final String QUADS = "quadriceps";
  private static final String HAMS = "hamstrings";
  private static final String GLUTES = "gluteus-maximus";
  private static final String ABDUCTORS = "hip-abductors";

  private static Exercise exercise(String id) {
    return CATALOGUE.exercises().get(id);
  }

  private static Stream<Exercise> main(String... patterns) {
    return CATALOGUE.exercises(Part.MAIN).stream()
        .filter(exercise -> Set.of(patterns).contains(exercise.pattern()));
  }

  private static boolean trains(Exercise exercise, String muscle) {
    return exercise.primary().contains(muscle) || exercise.secondary().contains(muscle);
  }

  /**
   * Distefano 2009: gluteus medius 81 in side-lying abduction, above all others; gluteus maximus
   * only 39 (from memory).
   */
  @Test
  void sideLyingAbductionIsForTheAbductors() {
    assertThat(main("abduction"))
        .filteredOn(exercise -> exercise.position() == Position.SIDE_LYING)
        .isNotEmpty()
        .allSatisfy(
            e -> assertThat(e.primary()).as(e.id()).contains(ABDUCTORS).doesNotContain(GLUTES));
  }

  /**
   * Distefano 2009: gluteus medius in the single-limb squat 64 and deadlift 59, the lunge 48, all
   * below abduction.
   */
  @Test
  void standingOnOneLegHelpsTheAbductors() {
    for (String id :
        List.of("single-leg-squat-to-chair", "dumbbell-single-leg-deadlift", "forward-lunge")) {
      assertThat(exercise(id).secondary()).as(id).contains(ABDUCTORS);
    }
  }

  /**
   * MacAskill 2014: gluteus maximus 101 in prone hip extension against 38 side-lying; gluteus
   * medius 63 in step-ups.
   */
  @Test
  void proneHipExtensionIsForTheGluteusMaximus() {
    assertThat(main("hip-extension"))
        .filteredOn(exercise -> exercise.family().equals("prone-hip-extension"))
        .isNotEmpty()
        .allMatch(exercise -> exercise.primary().contains(GLUTES));
    assertThat(main("step")).allMatch(exercise -> trains(exercise, ABDUCTORS));
  }

  /**
   * Serner 2014: adductor longus 108 in ball squeeze and Copenhagen, 64 side-lying; gluteus medius
   * and abdominals 5 to 48.
   */
  @Test
  void adductionIsForTheAdductors() {
    assertThat(main("adduction"))
        .isNotEmpty()
        .allSatisfy(
            e ->
                assertThat(e.primary())
                    .as(e.id())
                    .contains("hip-adductors")
                    .doesNotContain(ABDUCTORS, "abdominals"));
  }

  /**
   * Contreras 2015: biceps femoris 14.9 in the back squat against 40.8 in the hip thrust; vastus
   * lateralis 110.
   */
  @Test
  void squatsAreForTheQuadricepsAndNotForTheHamstrings() {
    assertThat(main("squat"))
        .allSatisfy(e -> assertThat(e.primary()).as(e.id()).contains(QUADS).doesNotContain(HAMS))
        .allSatisfy(e -> assertThat(trains(e, GLUTES)).as(e.id()).isTrue());
  }

  /**
   * Contreras 2015: gluteus maximus 69.5 and 86.8 in the hip thrust against 29.4 and 45.4 in the
   * back squat.
   */
  @Test
  void bridgesAreForTheGluteusMaximus() {
    assertThat(main("bridge")).allSatisfy(e -> assertThat(trains(e, GLUTES)).as(e.id()).isTrue());
    for (String id :
        List.of(
            "glute-bridge",
            "dumbbell-glute-bridge",
            "chair-hip-thrust",
            "dumbbell-chair-hip-thrust")) {
      assertThat(exercise(id).primary()).as(id).containsExactly(GLUTES);
      assertThat(exercise(id).secondary()).as(id).contains(HAMS);
    }
  }

  /** Neto 2020: gluteus maximus very high (above 60) in step-ups, split squats and lunges. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "low-step-up",
        "lateral-step-up",
        "high-step-up",
        "split-squat",
        "forward-lunge",
        "reverse-lunge"
      })
  void stepsAndLungesAreForQuadricepsAndGluteusMaximus(String id) {
    assertThat(exercise(id).primary()).contains(QUADS, GLUTES);
  }

  @Test
  void everyStepAndLungeTrainsQuadricepsFirstAndGluteusMaximusToo() {
    assertThat(main("step", "lunge"))
        .allSatisfy(e -> assertThat(e.primary()).as(e.id()).contains(QUADS))
        .allSatisfy(e -> assertThat(trains(e, GLUTES)).as(e.id()).isTrue());
  }

  /** Llurda-Almuzara 2021: leg curls lead the long head of biceps femoris (above 60). */
  @Test
  void legCurlsAreForTheHamstrings() {
    assertThat(main("knee-flexion"))
        .isNotEmpty()
        .allMatch(exercise -> exercise.primary().contains(HAMS));
  }

  /** McAllister 2014: Romanian deadlifts lead hamstring activity (direction from memory). */
  @Test
  void romanianDeadliftsAndGoodMorningsAreForTheHamstrings() {
    assertThat(main("hinge"))
        .filteredOn(
            exercise ->
                exercise.id().contains("romanian") || exercise.id().contains("good-morning"))
        .hasSizeGreaterThan(3)
        .allSatisfy(e -> assertThat(e.primary()).as(e.id()).contains(HAMS))
        .allSatisfy(e -> assertThat(e.secondary()).as(e.id()).contains(GLUTES, "lower-back"));
  }

  /**
   * Prime movers by joint action: Neumann, Kinesiology of the Musculoskeletal System, 3rd ed. (from
   * memory).
   */
  @ParameterizedTest
  @CsvSource({
    "knee-extension, quadriceps", "knee-flexion, hamstrings", "abduction, hip-abductors",
        "adduction, hip-adductors",
    "plantarflexion, calves", "dorsiflexion, shins", "elbow-extension, triceps",
        "hip-flexion, hip-flexors"
  })
  void singleJointWorkTrainsItsPrimeMoverFirst(String pattern, String muscle) {
    assertThat(main(pattern))
        .isNotEmpty()
        .allSatisfy(e -> assertThat(e.primary()).as(e.id()).contains(muscle));
  }
}

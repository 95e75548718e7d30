package counterset.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Part;
import counterset.model.Position;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the catalogue says of the knee, and of stretches, against published rankings. Measured
 * values are comparable within one study only, so that each check is a rank within one of them.
 */
class PublishedRankingsTest {

  private static final Catalogue CATALOGUE = Catalogues.embedded();

  private static Exercise exercise(String id) {
    return CATALOGUE.exercises().get(id);
  }

  private static int knee(String id) {
    return exercise(id).demandOn(Joint.KNEE);
  }

  private static boolean isForSoreKnees(Exercise exercise) {
    return CATALOGUE.limitations().get("sore-knees").allows(exercise);
  }

  private static Stream<Exercise> main(String... patterns) {
    return CATALOGUE.exercises(Part.MAIN).stream()
        .filter(exercise -> Set.of(patterns).contains(exercise.pattern()));
  }

  /**
   * Patellar tendon load index of Scattone Silva 2024: step-up 20 cm 0.187, 30 cm 0.321, lunge
   * 0.471; squat to 60 degrees 0.224, full 0.428, on one leg 0.580.
   */
  @ParameterizedTest
  @CsvSource({
    "low-step-up, high-step-up",
    "high-step-up, forward-lunge",
    "partial-squat, bodyweight-squat",
    "bodyweight-squat, single-leg-squat-to-chair",
    "rear-foot-raised-split-squat, forward-lunge",
    "dumbbell-partial-squat, dumbbell-squat",
    "low-step-up, squat-jump",
    "high-step-up, squat-jump"
  })
  void kneeDemandFollowsThePatellarTendonLoad(String lower, String higher) {
    assertThat(knee(lower)).isLessThanOrEqualTo(knee(higher));
  }

  /**
   * Tier 1 of Scattone Silva 2024 (at most 0.33) is the default for sore knees; tier 2 needs a
   * limit of its own.
   */
  @Test
  void soreKneesAllowTheFirstTierAndNotTheSecond() {
    assertThat(Stream.of("low-step-up", "step-down-tap", "partial-squat", "dumbbell-partial-squat"))
        .allMatch(id -> isForSoreKnees(exercise(id)));
    assertThat(
            Stream.of(
                "bodyweight-squat",
                "forward-lunge",
                "rear-foot-raised-split-squat",
                "single-leg-squat-to-chair"))
        .noneMatch(id -> isForSoreKnees(exercise(id)));
    assertThat(knee("partial-squat")).isLessThan(knee("bodyweight-squat"));
    assertThat(knee("low-step-up")).isLessThan(knee("forward-lunge"));
  }

  /**
   * Jumps load the tendon more than any step-up up to 30 cm: Scattone Silva 2024 (0.563 to 0.711
   * against 0.321).
   */
  @Test
  void jumpsAreNeverForSoreKnees() {
    List<Exercise> jumps =
        CATALOGUE.exercises().values().stream().filter(e -> e.traits().contains("jump")).toList();
    assertThat(jumps)
        .isNotEmpty()
        .allMatch(exercise -> exercise.demandOn(Joint.KNEE) == 3)
        .noneMatch(e -> isForSoreKnees(e));
    assertThat(main("step")).allMatch(exercise -> exercise.demandOn(Joint.KNEE) < 3);
  }

  /**
   * Wall squats load the joint most from 60 to 90 degrees; 0 to 50 degrees is the safe arc:
   * Escamilla 2009.
   */
  @Test
  void wallSquatsAreForSoreKneesOnlyHigh() {
    assertThat(isForSoreKnees(exercise("wall-sit"))).isFalse();
    assertThat(isForSoreKnees(exercise("high-wall-sit"))).isTrue();
    assertThat(knee("wall-sit")).isGreaterThan(knee("high-wall-sit"));
  }

  /** A squat is kind to the joint between 45 and 0 degrees: Powers 2014. A deep one says so. */
  @Test
  void squatsLungesAndStepsAreDeepOrEasyOnTheKnee() {
    assertThat(main("squat", "lunge", "step"))
        .allSatisfy(
            e ->
                assertThat(e.demandOn(Joint.KNEE) >= 2)
                    .as(e.id())
                    .isEqualTo(e.traits().contains("deep-knee-flexion")));
  }

  /** A side lunge loads the joint more than a forward one at 80 to 90 degrees: Escamilla 2008. */
  @Test
  void sideLungesAreNoEasierThanForwardOnes() {
    assertThat(knee("lateral-lunge")).isGreaterThanOrEqualTo(knee("forward-lunge"));
    assertThat(isForSoreKnees(exercise("lateral-lunge"))).isFalse();
  }

  /**
   * Knee extension is kind between 90 and 45 degrees, and harder than a squat from 30 to 0: Powers
   * 2014.
   */
  @Test
  void legExtensionIsFlaggedWhenItLocksTheKnee() {
    Exercise full = exercise("ankle-weight-leg-extension");
    Exercise arc = exercise("ankle-weight-low-arc-extension");
    assertThat(full.traits()).contains("knee-lockout-load");
    assertThat(isForSoreKnees(full)).isFalse();
    assertThat(arc.traits()).doesNotContain("knee-lockout-load");
    assertThat(isForSoreKnees(arc)).isTrue();
    assertThat(arc.demandOn(Joint.KNEE)).isLessThan(full.demandOn(Joint.KNEE));
  }

  /**
   * No loaded bending of the knee, so low by mechanics (reasoning; a straight-leg raise has 0.5
   * body weights, secondary). Body weight on the side of the knee: common practice, no source.
   */
  @Test
  void bridgesHingesAndSideLyingWorkAreEasyOnTheKnee() {
    Set<Position> onTheKneecap = Set.of(Position.KNEELING, Position.QUADRUPED);
    Set<String> onTheSideOfTheKnee =
        Set.of(
            "short-copenhagen",
            "short-side-plank-leg-raise",
            "side-plank-clam",
            "banded-side-plank-clam");
    assertThat(main("bridge", "hinge", "abduction", "adduction"))
        .filteredOn(exercise -> !onTheKneecap.contains(exercise.position()))
        .filteredOn(exercise -> !onTheSideOfTheKnee.contains(exercise.id()))
        .allSatisfy(
            exercise ->
                assertThat(exercise.demandOn(Joint.KNEE)).as(exercise.id()).isLessThanOrEqualTo(1));
  }

  /** A static hold of 10 to 30 s: Garber 2011. */
  @Test
  void stretchesAreHeldTenToThirtySecondsASide() {
    assertThat(CATALOGUE.exercises(Part.COOL_DOWN))
        .allSatisfy(
            stretch -> {
              int sides = stretch.isUnilateral() ? 2 : 1;
              assertThat(stretch.seconds().orElseThrow() / sides)
                  .as(stretch.id())
                  .isBetween(10, 30);
            });
  }
}

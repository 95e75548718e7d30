package counterset.catalogue;

import static counterset.catalogue.Verdicts.CATALOGUE;
import static counterset.catalogue.Verdicts.are;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Exercise;
import counterset.model.Load;
import counterset.model.Part;
import counterset.model.Position;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Exercises for legs and trunk, and people whose whole body needs care. */
class LowerBodyFallsTest {

  /**
   * No risk of a fall: ACOG Committee Opinion 804 for pregnancy (from memory); else common
   * practice, no source.
   */
  @ParameterizedTest
  @ValueSource(strings = {"pregnancy", "early-pregnancy", "unsteady-balance", "spinal-fracture"})
  void nobodyWhoMustNotFallGlidesTripsOrWavers(String limitation) {
    are(limitation, false, "slider-adduction-wall", "slider-reverse-lunge", "ball-seated-march");
    are(limitation, false, "band-side-step-walk", "band-side-step-hold");
    are(limitation, false, "step-edge-calf-raise", "standing-calf-raise", "forefoot-lean");
    are(limitation, false, "supported-single-leg-deadlift", "hanging-knee-raise");
    are(limitation, true, "side-step-walk", "supported-calf-raise", "supported-side-leg-raise");
  }

  /** One movement, one answer, as a warm-up too: common practice, no source. */
  @ParameterizedTest
  @ValueSource(strings = {"pregnancy", "unsteady-balance"})
  void aWarmUpIsNoExcuse(String limitation) {
    are(limitation, false, "warm-double-heel-raise", "standing-calf-raise");
  }

  /** Same posture, same verdict: common practice, no source. */
  @Test
  void twinsGetOneAnswer() {
    for (var limitation : CATALOGUE.limitations().values()) {
      assertThat(allows(limitation.id(), "forearm-leg-reach"))
          .as(limitation.id())
          .isEqualTo(allows(limitation.id(), "forearm-donkey-kick"));
      assertThat(allows(limitation.id(), "ball-reverse-leg-lift"))
          .as(limitation.id())
          .isEqualTo(allows(limitation.id(), "ball-reverse-raise"));
    }
  }

  private static boolean allows(String limitation, String id) {
    return CATALOGUE.limitations().get(limitation).allows(Verdicts.exercise(id));
  }

  /** Lying down and sitting up again provokes dizziness: common practice, no source. */
  @Test
  void unsteadyBalanceDoesNotGoDownAndUp() {
    are("unsteady-balance", false, "sit-up", "roll-down", "crunch-ball", "rolling-tuck");
    are("unsteady-balance", false, "dumbbell-chop", "ball-back-extension", "goblet-squat");
    are("unsteady-balance", false, "single-leg-calf-raise", "dumbbell-single-leg-calf-raise");
    are("unsteady-balance", true, "crunch", "dead-bug", "supported-hip-extension");
  }

  /**
   * No tight grip, no effort near the most: Pescatello 2004, Williams 2007 (from memory). A head
   * that hangs and jumps: common practice, no source.
   */
  @Test
  void highBloodPressureWorksModerately() {
    are("high-blood-pressure", false, "dumbbell-squat", "goblet-squat", "dumbbell-glute-bridge");
    are("high-blood-pressure", false, "overhead-march", "hollow-hold", "squat-jump");
    are("high-blood-pressure", false, "jumping-lunge", "ball-back-extension", "palm-push-brace");
    are("high-blood-pressure", true, "goblet-partial-squat", "one-dumbbell-romanian-deadlift");
    are("high-blood-pressure", true, "forearm-leg-reach", "glute-bridge", "dead-bug");
  }

  /** Moderate effort (13 to 14 of 20): ACOG Committee Opinion 804 (from memory). */
  @ParameterizedTest
  @ValueSource(strings = {"pregnancy", "early-pregnancy", "after-birth", "high-blood-pressure"})
  void whoMustNotStrainLiftsNothingHeavyWithTheLegs(String limitation) {
    assertThat(CATALOGUE.exercises(Part.MAIN))
        .filteredOn(e -> isLegs(e) && isHeavy(e))
        .hasSizeGreaterThanOrEqualTo(15)
        .noneMatch(CATALOGUE.limitations().get(limitation)::allows);
  }

  private static boolean isLegs(Exercise e) {
    return e.pattern().equals("squat")
        || e.pattern().equals("hinge")
        || e.pattern().equals("bridge")
        || e.pattern().equals("plantarflexion");
  }

  private static boolean isHeavy(Exercise e) {
    return e.needs().stream().anyMatch(n -> n.load().equals(Optional.of(Load.HEAVY)));
  }

  /**
   * No prolonged lying on the back: ACOG Committee Opinion 804 (from memory); an older text says
   * after the first trimester (secondary).
   */
  @Test
  void onlyEarlyPregnancyLiesOnTheBack() {
    are("early-pregnancy", true, "glute-bridge", "dead-bug", "clam");
    are("pregnancy", false, "glute-bridge", "dead-bug");
    are("pregnancy", true, "quad-set", "seated-heel-raise", "clam");
    are("pregnancy", false, "kneeling-lean-back", "seated-lean-back", "side-plank-leg-lift");
    assertThat(CATALOGUE.exercises().values())
        .filteredOn(CATALOGUE.limitations().get("early-pregnancy")::allows)
        .noneMatch(e -> e.position() == Position.PRONE);
  }

  /** Exercise comes back step by step: ACOG Committee Opinion 804 (from memory). */
  @Test
  void afterBirthTheBellyIsNotPressed() {
    are("after-birth", false, "crunch", "curl-up", "double-leg-lower", "forearm-plank");
    are("after-birth", false, "prone-arm-leg-raise");
    are("after-birth", false, "jumping-jack", "heel-drop", "kettlebell-swing");
    are("after-birth", true, "dead-bug", "glute-bridge", "goblet-partial-squat", "bird-dog");
  }

  /**
   * Impact is for bones, but not after a vertebral fracture: Brooke-Wavell 2022 (secondary). Side
   * bends and far loads: common practice, no source.
   */
  @Test
  void bonesWantImpactUnlessTheSpineHasBroken() {
    are("low-bone-density", true, "heel-drop", "dumbbell-romanian-deadlift", "goblet-squat");
    are("spinal-fracture", false, "heel-drop", "dumbbell-romanian-deadlift", "goblet-squat");
    are("spinal-fracture", false, "overhead-press", "overhead-triceps-extension");
    are("low-bone-density", false, "dumbbell-side-bend", "band-good-morning", "double-leg-lower");
    are("spinal-fracture", true, "bird-dog", "hip-hinge", "supported-side-leg-raise");
    are("no-jumping", false, "heel-drop");
  }
}

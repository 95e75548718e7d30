package counterset.catalogue;

import static counterset.catalogue.Verdicts.CATALOGUE;
import static counterset.catalogue.Verdicts.are;
import static counterset.catalogue.Verdicts.exercise;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Load;
import counterset.model.Part;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Exercises for legs and trunk that could hurt a joint, and who must not get them. */
class LowerBodySafetyTest {

  private static final Set<String> ON_THE_FEET =
      Set.of("squat", "hinge", "plantarflexion", "carry");

  private static Stream<Exercise> heavyInTheHands() {
    return CATALOGUE.exercises(Part.MAIN).stream()
        .filter(e -> ON_THE_FEET.contains(e.pattern()))
        .filter(e -> e.needs().stream().anyMatch(n -> n.load().equals(Optional.of(Load.HEAVY))))
        .filter(e -> !e.id().contains("goblet"));
  }

  private static int back(String id) {
    return exercise(id).demandOn(Joint.LOWER_BACK);
  }

  /** A heavy weight hangs from the fingers all interval long: common practice, no source. */
  @ParameterizedTest
  @ValueSource(strings = {"sore-wrists", "sore-elbows", "high-blood-pressure"})
  void heavyWeightsThatHangFromTheHandsNeedAGrip(String limitation) {
    String[] ids = heavyInTheHands().map(Exercise::id).toArray(String[]::new);
    assertThat(ids).hasSizeGreaterThanOrEqualTo(17);
    are(limitation, false, ids);
    are(limitation, false, "kettlebell-swing");
    assertThat(heavyInTheHands()).allMatch(e -> e.demandOn(Joint.WRIST) >= 2);
  }

  /** A palm pressed against a wall is a bent-back hand too: common practice, no source. */
  @Test
  void soreWristsDoNotPushAWall() {
    are("sore-wrists", false, "wall-press-dead-bug", "chair-knee-tuck");
    are("sore-wrists", true, "dead-bug", "supine-toe-tap");
  }

  /** A load on the shoulders or in the hands adds to the spine: McGill 2014, Waters 1993. */
  @ParameterizedTest
  @CsvSource({
    "bodyweight-squat, dumbbell-squat",
    "bodyweight-squat, goblet-squat",
    "partial-squat, dumbbell-partial-squat",
    "sumo-squat, dumbbell-sumo-squat",
    "standing-calf-raise, dumbbell-calf-raise",
    "forearm-plank, dumbbell-squat",
    "braced-press-out, goblet-squat",
    "forearm-plank, sit-up",
    "curl-up, sit-up",
    "quadruped-leg-lift, prone-arm-leg-raise"
  })
  void theScaleOfTheLowerBackRisesWithTheLoad(String lower, String higher) {
    assertThat(back(lower)).isLessThan(back(higher));
  }

  /**
   * A push-up loads the spine with 1.2 to 1.5 kN: McGill 2014; straight planks are endurance work
   * in the neutral curve.
   */
  @Test
  void aSoreBackPlanksAndDoesNotSquatHeavy() {
    are("sore-lower-back", true, "forearm-plank", "high-plank", "front-hold-march");
    are("sore-lower-back", true, "bodyweight-squat", "goblet-partial-squat");
    are("sore-lower-back", false, "goblet-squat", "dumbbell-squat", "dumbbell-sumo-squat");
    are("sore-lower-back", false, "dumbbell-calf-raise", "standing-side-bend", "seated-lean-back");
    are("sore-lower-back", false, "prone-arm-leg-raise", "sit-up", "heel-drop");
  }

  /** A higher seat takes load off the knee: Janssen 2002. */
  @Test
  void soreKneesStandUpFromAHighSeat() {
    are("sore-knees", true, "raised-sit-to-stand");
    are("sore-knees", false, "sit-to-stand", "dumbbell-sit-to-stand");
    assertThat(exercise("raised-sit-to-stand").root()).isEqualTo("sit-to-stand");
  }

  /** The side of the knee bears no body weight: common practice, no source. */
  @Test
  void soreKneesDoNotLieOnTheKnee() {
    are("sore-knees", false, "short-copenhagen", "short-side-plank-leg-raise", "side-plank-knees");
    are("sore-knees", false, "side-plank-clam", "banded-side-plank-clam");
    are("sore-knees", false, "sole-to-sole-sit", "figure-four-stretch");
    are("sore-knees", true, "side-plank", "clam", "side-lying-leg-raise");
  }

  /** What is worn may stay on only where the knee does not lock against it: Powers 2014. */
  @Test
  void anklesStayBareWhereTheKneeStraightens() {
    assertThat(exercise("seated-inner-sweep").allowsWorn()).isEmpty();
    assertThat(exercise("seated-low-arc-extension").allowsWorn()).isEmpty();
  }

  /**
   * Tendons at the outer hip: nothing across the midline, Grimaldi and Fearon 2015 (from memory).
   * The ends of bend and turn: common practice, no source.
   */
  @Test
  void soreHipsStayInTheMiddle() {
    are("sore-hips", false, "reverse-clam", "seated-hip-hinge", "seated-hip-hinge-dumbbell");
    are("sore-hips", false, "standing-cross-over-lift", "supported-cross-over-lift", "hip-hike");
    are("sore-hips", false, "standing-hip-hitch", "hip-shift-stretch", "crossed-leg-lean");
    are("sore-hips", true, "clam", "glute-bridge", "side-step-walk", "partial-squat");
    assertThat(CATALOGUE.limitations().get("sore-hips").caution())
        .contains("do not lie on the side that hurts");
  }

  /** Deep bends take the ankle to its end, one leg makes it waver: common practice, no source. */
  @Test
  void soreAnklesStayHighAndOnTwoFeet() {
    are("sore-ankles", false, "bodyweight-squat", "goblet-squat", "forward-lunge", "split-squat");
    are("sore-ankles", false, "single-leg-hip-hinge", "supported-single-leg-deadlift", "heel-drop");
    are("sore-ankles", false, "step-edge-calf-raise");
    are("sore-ankles", true, "partial-squat", "sit-to-stand", "glute-bridge", "wall-sit");
  }

  /** A head that nothing holds, a load that pulls at the shoulders: common practice, no source. */
  @Test
  void aSoreNeckIsNotHeldUp() {
    are("sore-neck", false, "chair-hip-thrust", "dumbbell-chair-hip-thrust", "farmer-march");
    are("sore-neck", true, "glute-bridge", "dead-bug", "suitcase-march");
  }
}

package counterset.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Need;
import counterset.model.Part;
import counterset.model.Region;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Upper-body exercises that could hurt someone, and who must not get them. */
class UpperBodySafetyTest {

  private static final Catalogue CATALOGUE = Catalogues.embedded();

  private static Exercise exercise(String id) {
    assertThat(CATALOGUE.exercises()).containsKey(id);
    return CATALOGUE.exercises().get(id);
  }

  private static Stream<Exercise> main() {
    return CATALOGUE.exercises(Part.MAIN).stream();
  }

  private static Stream<Exercise> upperBodyWith(String equipment) {
    return main()
        .filter(UpperBodySafetyTest::isUpper)
        .filter(e -> e.needs().stream().map(Need::equipment).anyMatch(equipment::equals));
  }

  private static boolean isUpper(Exercise exercise) {
    return exercise.primary().stream()
        .allMatch(muscle -> CATALOGUE.muscles().get(muscle).region() == Region.UPPER);
  }

  private static void are(String limitation, boolean allowed, String... exercises) {
    assertThat(exercises)
        .allSatisfy(
            id ->
                assertThat(CATALOGUE.limitations().get(limitation).allows(exercise(id)))
                    .as("%s for %s", id, limitation)
                    .isEqualTo(allowed));
  }

  private static void haveOn(Joint joint, int demand, String... exercises) {
    assertThat(exercises)
        .allSatisfy(id -> assertThat(exercise(id).demandOn(joint)).as(id).isEqualTo(demand));
  }

  // Falls

  /**
   * No risk of a fall in pregnancy: ACOG Committee Opinion 804 (from memory); for unsteady balance
   * and low bone density: common practice, no source.
   */
  @ParameterizedTest
  @ValueSource(strings = {"pregnancy", "unsteady-balance", "low-bone-density"})
  void nobodyWhoMustNotFallHangsOrLeansOnABall(String limitation) {
    String[] hanging = upperBodyWith("pull-up-bar").map(Exercise::id).toArray(String[]::new);
    assertThat(hanging).hasSizeGreaterThanOrEqualTo(6);
    are(limitation, false, hanging);
    are(limitation, false, "ball-chest-press", "ball-hands-push-up", "ball-chest-supported-row");
    are(limitation, false, "slider-reach-push-up", "slider-fly-push-up", "slider-lat-pull");
    are(limitation, false, "chair-dip", "bottoms-up-press");
  }

  /** Three dips with the hands behind, one answer: common practice, no source. */
  @Test
  void noDipIsForPregnancy() {
    are("pregnancy", false, "chair-dip", "floor-dip", "step-dip");
  }

  /**
   * Steps of up to 30 cm stay in the first tier of load (0.321 of at most 0.33): Scattone Silva
   * 2024. A chair is higher.
   */
  @Test
  void soreKneesDoNotClimbAChair() {
    are("sore-knees", false, "lowering-pull-up");
    are("sore-knees", true, "pull-up", "scapular-pull-up");
  }

  /** An open band knotted round a bar comes loose under a body: common practice, no source. */
  @Test
  void onlyAClosedBandCarriesABody() {
    assertThat(upperBodyWith("assist-band").map(Exercise::id))
        .containsExactly("band-assisted-pull-up");
    assertThat(upperBodyWith("pull-up-bar").flatMap(e -> e.needs().stream()).map(Need::equipment))
        .doesNotContain("long-band", "loop-band");
  }

  // Joints

  /** Weight on one arm; palms that face each other: common practice, no source. */
  @Test
  void soreShouldersCarryNoWeightOnOneArm() {
    are("sore-shoulders", false, "renegade-row", "knee-renegade-row", "all-fours-row");
    are("sore-shoulders", false, "all-fours-kickback", "all-fours-bare-kickback");
    are("sore-shoulders", true, "one-arm-floor-press", "neutral-grip-floor-press");
    are("sore-shoulders", true, "supported-one-arm-row", "standing-arm-pulse-back");
  }

  /** Lateral raises go with signs of impingement, outward turns against them: Kolber 2014. */
  @Test
  void soreShouldersTurnOutwardAndDoNotRaiseSideways() {
    are("sore-shoulders", false, "lateral-raise", "seated-lateral-raise", "upright-row");
    are("sore-shoulders", true, "side-lying-external-rotation", "loop-band-external-rotation");
  }

  /** A racked bell bends the wrist back, palms pressed together too: common practice, no source. */
  @Test
  void soreWristsRackNoBellAndPressNoPalms() {
    are("sore-wrists", false, "kettlebell-overhead-press", "kettlebell-floor-press");
    are("sore-wrists", false, "half-kneeling-kettlebell-press", "bottoms-up-press");
    are("sore-wrists", false, "palm-press-out", "squeeze-press-out");
    are("sore-wrists", false, "renegade-row", "knee-renegade-row");
    are("sore-wrists", true, "overhead-press", "half-kneeling-press", "one-arm-floor-press");
  }

  /** The same two dumbbells in the same hands for as long: common practice, no source. */
  @Test
  void aShrugGripsAsHardAsAHold() {
    for (String shrug : List.of("dumbbell-shrug", "kettlebell-shrug")) {
      assertThat(exercise(shrug).traits()).contains("grip-heavy");
      are("sore-wrists", false, shrug);
      are("high-blood-pressure", false, shrug);
      are("sore-elbows", false, shrug);
    }
    haveOn(Joint.NECK, 2, "dumbbell-shrug", "standing-heavy-hold", "side-arm-hold", "arm-circles");
  }

  /** What bends or steadies the elbow against a load: common practice, no source. */
  @Test
  void soreElbowsRowAndPressButDoNotCurlOrDip() {
    are("sore-elbows", false, "dumbbell-curl", "hammer-curl", "reverse-wrist-curl", "wrist-curl");
    are("sore-elbows", false, "chair-dip", "close-push-up", "lying-triceps-extension", "chin-up");
    are("sore-elbows", false, "lateral-raise", "standing-heavy-hold", "dead-hang");
    are("sore-elbows", true, "supported-one-arm-row", "neutral-grip-floor-press", "chair-band-row");
    are("sore-elbows", true, "scaption-raise", "band-external-rotation", "wall-push-up");
  }

  /** A load overhead on an unsupported trunk asks more of the back: common practice, no source. */
  @Test
  void aSoreBackPressesOverheadSittingOrKneeling() {
    are("sore-lower-back", false, "overhead-press", "alternating-overhead-press");
    are("sore-lower-back", false, "one-arm-overhead-press", "kettlebell-overhead-press");
    are("sore-lower-back", true, "seated-overhead-press", "half-kneeling-press");
    are("sore-lower-back", false, "renegade-row", "knee-renegade-row", "standing-heavy-hold");
  }

  // Blood pressure

  /**
   * Holds are kept easy and short: Pescatello 2004 against Edwards 2023 (from memory); a hard push
   * against what does not give is neither: common practice, no source.
   */
  @Test
  void highBloodPressurePushesAgainstNothingThatDoesNotGive() {
    are("high-blood-pressure", false, "standing-side-press-in", "wall-arm-press-back");
    are("high-blood-pressure", false, "lying-arm-press-down", "seated-thigh-press-down");
    are("high-blood-pressure", false, "finger-hook-pull-apart", "wall-rotation-press");
    are("high-blood-pressure", false, "squeeze-press-out", "ball-squeeze-press-out");
    are("high-blood-pressure", true, "chair-band-row", "neutral-grip-floor-press");
  }
}

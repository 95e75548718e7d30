package counterset.catalogue;

import static counterset.catalogue.Verdicts.are;
import static counterset.catalogue.Verdicts.exercise;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Joint;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Upper-body exercises that could hurt a joint or drive up the pressure, and who must not get them.
 */
class UpperBodySafetyTest {

  private static void haveOn(Joint joint, int demand, String... exercises) {
    assertThat(exercises)
        .allSatisfy(id -> assertThat(exercise(id).demandOn(joint)).as(id).isEqualTo(demand));
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

  /**
   * A racked bell bends the wrist back, palms pressed together too, and a press with the palms
   * forward, which a neutral grip spares: common practice, no source.
   */
  @Test
  void soreWristsRackNoBellAndPressNoPalms() {
    are("sore-wrists", false, "kettlebell-overhead-press", "kettlebell-floor-press");
    are("sore-wrists", false, "half-kneeling-kettlebell-press", "bottoms-up-press");
    are("sore-wrists", false, "palm-press-out", "squeeze-press-out");
    are("sore-wrists", false, "renegade-row", "knee-renegade-row");
    are("sore-wrists", false, "overhead-press", "alternating-overhead-press", "three-part-curl");
    are("sore-wrists", true, "neutral-grip-overhead-press", "half-kneeling-press");
    are("sore-wrists", true, "one-arm-floor-press", "hammer-curl");
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

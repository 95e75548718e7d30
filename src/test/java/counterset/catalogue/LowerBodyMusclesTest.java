package counterset.catalogue;

import static counterset.catalogue.Verdicts.CATALOGUE;
import static counterset.catalogue.Verdicts.exercise;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Exercise;
import counterset.model.Need;
import counterset.model.Part;
import counterset.model.Position;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What exercises for legs and trunk train, how skilled they are, and what they need. */
class LowerBodyMusclesTest {

  private static Stream<Exercise> main() {
    return CATALOGUE.exercises(Part.MAIN).stream();
  }

  /** Adductor longus 14 % in supine bilateral adduction, 64 side-lying: Serner 2014, table 3. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "supine-leg-opener",
        "ankle-weight-leg-opener",
        "bent-leg-opener",
        "ankle-weight-bent-leg-opener",
        "bent-knee-fall-out"
      })
  void openingTheLegsOnTheBackIsNoSetForTheAdductors(String id) {
    assertThat(exercise(id).primary()).doesNotContain("hip-adductors");
    assertThat(exercise(id).secondary()).contains("hip-adductors");
    assertThat(exercise("side-lying-inner-thigh-lift").primary()).contains("hip-adductors");
  }

  /**
   * A movement at right angles to gravity has nothing to lift; what holds the limb up works
   * (mechanics).
   */
  @ParameterizedTest
  @CsvSource({
    "side-lying-leg-curl, hip-abductors, hamstrings",
    "ankle-weight-side-lying-leg-curl, hip-abductors, hamstrings",
    "side-lying-leg-push-back, hip-abductors, gluteus-maximus",
    "ankle-weight-side-lying-push-back, hip-abductors, gluteus-maximus",
    "seated-side-tap, hip-flexors, hip-abductors",
    "ankle-weight-seated-side-tap, hip-flexors, hip-abductors",
    "seated-inner-sweep, hip-flexors, hip-adductors"
  })
  void gravityIsNotForgotten(String id, String holds, String moves) {
    assertThat(exercise(id).primary()).containsExactly(holds);
    assertThat(exercise(id).secondary()).contains(moves);
  }

  /**
   * Prime movers by joint action: Neumann, Kinesiology of the Musculoskeletal System, 3rd ed. (from
   * memory).
   */
  @ParameterizedTest
  @CsvSource({
    "standing-front-leg-raise, hip-flexors",
    "seated-knee-lift, hip-flexors",
    "standing-knee-drive, hip-flexors",
    "chair-knee-drive, hip-flexors",
    "arms-crossed-hinge, hamstrings",
    "split-stance-hinge, hamstrings",
    "all-fours-leg-reach, gluteus-maximus",
    "wall-opposite-reach, gluteus-maximus",
    "kneeling-lean-back, quadriceps",
    "bridge-heel-raise, gluteus-maximus",
    "ball-bridge, hamstrings",
    "supported-hip-hike, hip-abductors"
  })
  void aVariantTrainsWhatItsRootTrains(String id, String muscle) {
    assertThat(exercise(id).primary()).containsExactly(muscle);
  }

  /** Gluteus maximus 59 in the single-limb squat, the highest of 12: Distefano 2009. */
  @Test
  void theSingleLegSquatIsForTheGluteusMaximusToo() {
    assertThat(exercise("single-leg-squat-to-chair").primary()).contains("gluteus-maximus");
  }

  /** One movement under two names is one exercise in two variants: common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "ball-reverse-leg-lift, ball-reverse-raise",
    "standing-hip-hitch, supported-hip-hike",
    "standing-knee-lift-slow, chair-knee-drive",
    "chair-hand-leg-reach, leaning-leg-lift",
    "wall-opposite-reach, supported-hip-extension",
    "heel-peel-march, heel-peel",
    "bent-knee-calf-raise, dumbbell-wide-stance-calf-raise",
    "partial-sumo-squat, sumo-floor-pull"
  })
  void twinsShareARoot(String one, String other) {
    assertThat(exercise(one).root()).isEqualTo(exercise(other).root());
  }

  /** Level is skill: these only want a lighter mass, band or cuff. Common practice, no source. */
  @Test
  void beginnersUseWhatTheyOwn() {
    for (String equipment : new String[] {"ankle-weights", "loop-band", "dumbbell"}) {
      assertThat(main())
          .filteredOn(e -> e.level() == 1 && e.needs().stream().anyMatch(n -> is(n, equipment)))
          .filteredOn(e -> e.position() != Position.SEATED)
          .as(equipment)
          .hasSizeGreaterThanOrEqualTo(8);
    }
    assertThat(exercise("goblet-squat").level()).isEqualTo(1);
    assertThat(exercise("dumbbell-romanian-deadlift").level()).isEqualTo(1);
    assertThat(exercise("dead-bug").level()).isEqualTo(1);
    assertThat(exercise("forearm-plank").level()).isEqualTo(1);
  }

  private static boolean is(Need need, String equipment) {
    return need.equipment().equals(equipment);
  }

  /** A bare hinge is a drill; a main lift is at least moderate: Iversen 2021. */
  @Test
  void aHingeWithoutALoadIsNoMainLift() {
    assertThat(main())
        .filteredOn(e -> e.pattern().equals("hinge") && e.position() == Position.STANDING)
        .filteredOn(e -> e.needs().isEmpty() && !e.traits().contains("single-leg-stand"))
        .hasSizeGreaterThanOrEqualTo(6)
        .allMatch(e -> e.intensity() == 1);
  }

  /** A band that is fixed beside one needs something that holds it. */
  @Test
  void aFixedBandNeedsAnAnchor() {
    assertThat(main())
        .filteredOn(e -> e.setup().matches(".*([Ff]ix the band|anchored band).*"))
        .hasSizeGreaterThanOrEqualTo(5)
        .allMatch(e -> e.needs().stream().anyMatch(n -> is(n, "anchor")));
  }

  /** A load never lowers the cost of one move: arithmetic of moving mass. */
  @ParameterizedTest
  @CsvSource({
    "dumbbell-low-step-up, low-step-up",
    "dumbbell-sit-to-stand, sit-to-stand",
    "standing-knee-drive-ankle-weights, standing-knee-drive",
    "loop-band-knee-drive, standing-knee-drive"
  })
  void aLoadCostsNoLess(String loaded, String bare) {
    assertThat(exercise(loaded).met().value()).isGreaterThanOrEqualTo(exercise(bare).met().value());
  }
}

package counterset.catalogue;

import static counterset.catalogue.Verdicts.CATALOGUE;
import static counterset.catalogue.Verdicts.exercise;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Exercise;
import counterset.model.Part;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which muscle groups an upper-body exercise is for, and which exercises are one. */
class UpperBodyMusclesTest {

  private static Stream<Exercise> main() {
    return CATALOGUE.exercises(Part.MAIN).stream();
  }

  /**
   * Rows train upper and middle back and the latissimus, with or without a support: Fenwick 2009, J
   * Strength Cond Res (from memory).
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "bent-over-row",
        "bent-over-kettlebell-row",
        "thigh-supported-row",
        "supported-one-arm-row",
        "row-to-hip",
        "all-fours-row",
        "ball-chest-supported-row",
        "chair-band-row",
        "seated-low-band-row",
        "seated-floor-band-row"
      })
  void aRowIsARowWhateverCarriesTheTrunk(String id) {
    assertThat(exercise(id).primary()).containsExactlyInAnyOrder("upper-back", "lats");
  }

  /**
   * Pectoralis major works more than latissimus in the pull-over: Marchetti and Uchida 2011, J Appl
   * Biomech (from memory).
   */
  @ParameterizedTest
  @ValueSource(strings = {"dumbbell-pull-over", "kettlebell-pull-over", "two-dumbbell-pull-over"})
  void aPullOverIsForTheChestToo(String id) {
    assertThat(exercise(id).primary()).contains("lats", "chest");
  }

  /**
   * Prime movers by joint action: Neumann, Kinesiology of the Musculoskeletal System, 3rd ed. (from
   * memory). Horizontal abduction: rear deltoid with the middle trapezius; flexion: front deltoid;
   * internal rotation: pectoralis major and latissimus; opposite arm and leg raised from prone:
   * back extensors and gluteus maximus; arms lifted off the floor from prone: no latissimus.
   */
  @ParameterizedTest
  @CsvSource({
    "bent-over-reverse-fly, shoulders, chest",
    "seated-reverse-fly, shoulders, chest",
    "band-pull-apart, shoulders, chest",
    "standing-low-scoop, shoulders, chest",
    "self-resisted-internal-rotation, chest, shoulders",
    "prone-swimmer, lower-back, upper-back",
    "prone-swimmer, gluteus-maximus, upper-back",
    "prone-pull-down, upper-back, lats",
    "prone-hover-row, upper-back, lats"
  })
  void theMainMoverIsTheOneAgainstTheLoad(String id, String mover, String other) {
    assertThat(exercise(id).primary()).contains(mover).doesNotContain(other);
  }

  /**
   * The blades part against the load by serratus anterior: Ludewig 2004, Am J Sports Med (from
   * memory). It is no pull.
   */
  @ParameterizedTest
  @ValueSource(strings = {"all-fours-blade-pinch", "forearm-blade-pinch"})
  void pushingTheBladesApartIsNoUpperBackWork(String id) {
    assertThat(exercise(id).primary()).doesNotContain("upper-back", "lats");
  }

  /** Flexors and extensors of the wrist oppose each other: Neumann, 3rd ed. (from memory). */
  @Test
  void theTwoSidesOfTheForearmAreTwoPatterns() {
    assertThat(exercise("wrist-curl").pattern()).isEqualTo("wrist-flexion");
    assertThat(exercise("reverse-wrist-curl").pattern()).isEqualTo("wrist-extension");
    assertThat(exercise("finger-spread-and-fist").pattern()).isEqualTo("wrist-extension");
  }

  /** What only steadies the arm is not trained: common practice, no source. */
  @Test
  void straighteningTheElbowTrainsTheTricepsOnly() {
    assertThat(main().filter(e -> List.of("triceps-extension", "kickback").contains(e.family())))
        .hasSizeGreaterThanOrEqualTo(10)
        .allSatisfy(e -> assertThat(e.primary()).as(e.id()).containsExactly("triceps"))
        .allSatisfy(e -> assertThat(e.secondary()).as(e.id()).isEmpty());
  }

  /** Two grips, stances or seats of one lift are one exercise: common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "seated-overhead-press, overhead-press",
    "alternating-overhead-press, rotating-press",
    "row-to-hip, supported-one-arm-row",
    "seated-floor-band-row, seated-low-band-row",
    "scaption-raise, lateral-raise",
    "chin-up, lowering-pull-up",
    "lying-arm-press-down, seated-thigh-press-down",
    "wall-arm-press-back, standing-arm-pulse-back"
  })
  void twinsShareARoot(String one, String other) {
    assertThat(exercise(one).root()).isEqualTo(exercise(other).root());
  }
}

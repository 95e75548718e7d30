package counterset.catalogue;

import static counterset.catalogue.Verdicts.CATALOGUE;
import static counterset.catalogue.Verdicts.are;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Exercise;
import counterset.model.Need;
import counterset.model.Part;
import counterset.model.Region;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Upper-body exercises that one can fall from, and who must not get them. */
class UpperBodyFallsTest {

  private static Stream<Exercise> main() {
    return CATALOGUE.exercises(Part.MAIN).stream();
  }

  private static Stream<Exercise> upperBodyWith(String equipment) {
    return main()
        .filter(UpperBodyFallsTest::isUpper)
        .filter(e -> e.needs().stream().map(Need::equipment).anyMatch(equipment::equals));
  }

  private static boolean isUpper(Exercise exercise) {
    return exercise.primary().stream()
        .allMatch(muscle -> CATALOGUE.muscles().get(muscle).region() == Region.UPPER);
  }

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
    are(limitation, false, "bottoms-up-press");
  }

  /** Three dips with the hands behind, one answer: common practice, no source. */
  @ParameterizedTest
  @ValueSource(strings = {"pregnancy", "unsteady-balance", "low-bone-density"})
  void noDipIsForThoseWhoMustNotFall(String limitation) {
    are(limitation, false, "chair-dip", "floor-dip", "step-dip");
  }

  /** Sitting on the floor is not lying on the back: common practice, no source. */
  @Test
  void pregnancySitsOnTheFloorAndNoFloorDoesNot() {
    are("pregnancy", true, "seated-floor-band-row", "leg-resisted-curl");
    are("no-floor", false, "seated-floor-band-row", "leg-resisted-curl", "step-dip");
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
}

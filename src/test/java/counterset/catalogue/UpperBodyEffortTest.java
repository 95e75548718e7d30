package counterset.catalogue;

import static counterset.catalogue.Verdicts.CATALOGUE;
import static counterset.catalogue.Verdicts.exercise;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Exercise;
import counterset.model.Load;
import counterset.model.Need;
import counterset.model.Part;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How hard and how difficult upper-body exercises are, and what they need. */
class UpperBodyEffortTest {

  /**
   * Force under the hands: feet raised above floor above knees above hands raised: Ebben 2011, J
   * Strength Cond Res 25:2891 (from memory). A wall carries more than a chair: common practice, no
   * source.
   */
  @ParameterizedTest
  @CsvSource({
    "decline-push-up, push-up",
    "push-up, knee-push-up",
    "knee-push-up, wall-push-up",
    "chair-push-up, wall-push-up",
    "close-push-up, close-knee-push-up",
    "close-knee-push-up, wall-close-push-up"
  })
  void pushUpsFollowTheForceUnderTheHands(String harder, String easier) {
    assertThat(exercise(harder).intensity()).isGreaterThanOrEqualTo(exercise(easier).intensity());
    assertThat(exercise(harder).met().value())
        .isGreaterThanOrEqualTo(exercise(easier).met().value());
  }

  /** A main lift is at least moderate: Iversen 2021; these have next to no load. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "wall-push-up",
        "wall-push-up-on-fists",
        "wall-close-push-up",
        "prone-hover-row",
        "seated-push-down-lift",
        "reverse-snow-angel",
        "high-wall-push"
      })
  void bareWorkNextToNothingIsNoMainLift(String id) {
    assertThat(exercise(id).intensity()).isEqualTo(1);
  }

  /** Level is skill: these lifts only want a lighter mass. Common practice, no source. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "floor-press",
        "overhead-press",
        "bent-over-row",
        "bent-over-kettlebell-row",
        "dumbbell-pull-over",
        "dumbbell-curl",
        "overhead-triceps-extension",
        "lateral-raise"
      })
  void beginnersLiftWhatEverybodyLifts(String id) {
    assertThat(exercise(id).level()).isEqualTo(1);
    assertThat(exercise(id).isUnilateral()).isFalse();
  }

  /** Whoever can do a push-up can do these: common practice, no source. */
  @ParameterizedTest
  @ValueSource(strings = {"pike-push-up", "decline-push-up", "close-push-up", "renegade-row"})
  void theIntermediateGetHarderPushUps(String id) {
    assertThat(exercise(id).level()).isEqualTo(2);
  }

  @Test
  void theBigLiftsOfTheUpperBodyAreThereForBeginners() {
    for (String pattern : new String[] {"horizontal-push", "horizontal-pull", "vertical-push"}) {
      assertThat(CATALOGUE.exercises(Part.MAIN))
          .filteredOn(e -> e.level() == 1 && e.intensity() == 3)
          .filteredOn(e -> e.needs().stream().allMatch(n -> n.equipment().equals("dumbbell")))
          .as(pattern)
          .anyMatch(e -> CATALOGUE.wants().patternOf(e).orElseThrow().id().equals(pattern));
    }
  }

  /** A handle may weigh anything. */
  @ParameterizedTest
  @ValueSource(strings = {"push-up-on-dumbbells", "knee-push-up-on-dumbbells"})
  void aHandleHasNoLoad(String id) {
    assertThat(exercise(id).needs()).extracting(Need::load).containsExactly(Optional.empty());
  }

  /** The same lift beside the same support: common practice, no source. */
  @Test
  void theSameLiftHasTheSameLoad() {
    assertThat(exercise("forearm-supported-row").needs())
        .extracting(Need::load)
        .contains(Optional.of(Load.HEAVY));
    assertThat(exercise("alternating-dumbbell-curl").needs())
        .isEqualTo(exercise("dumbbell-curl").needs());
  }

  /** A mat is for comfort where one kneels. */
  @Test
  void kneelingNeedsNoMat() {
    assertThat(CATALOGUE.exercises(Part.MAIN))
        .filteredOn(e -> e.primary().stream().anyMatch("shoulders"::equals))
        .flatMap(Exercise::needs)
        .extracting(Need::equipment)
        .doesNotContain("mat");
  }
}

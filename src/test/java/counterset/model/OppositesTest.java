package counterset.model;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.model.SupersetKind.*;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.ExerciseBuilder;
import counterset.fixture.Trade;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Worked examples by joint action: Neumann, Kinesiology of the Musculoskeletal System, 3rd ed.
 * (from memory).
 */
class OppositesTest {

  private final Opposites opposites = new Opposites(Trade.of());

  private final Exercise extension = move("leg-extension", "knee-extension", "quadriceps");
  private final Exercise curl = move("leg-curl", "knee-flexion", "hamstrings");
  private final Exercise squat =
      builder("squat", "squat", "quadriceps").withSecondary("gluteus-maximus").build();
  private final Exercise bridge =
      builder("bridge", "bridge", "gluteus-maximus").withSecondary("hamstrings").build();
  private final Exercise hinge = move("hinge", "hinge", "hamstrings");
  private final Exercise push = builder("push", "push", "chest").withSecondary("triceps").build();
  private final Exercise row = builder("row", "pull", "upper-back").withSecondary("biceps").build();
  private final Exercise abduction = move("abduction", "abduction", "hip-abductors");

  private static ExerciseBuilder builder(String id, String pattern, String... primary) {
    return exercise(id).withPattern(pattern).withPrimary(primary);
  }

  private static Exercise move(String id, String pattern, String... primary) {
    return builder(id, pattern, primary).build();
  }

  private void assertKind(SupersetKind kind, Exercise first, Exercise second) {
    assertThat(opposites.kind(first, second))
        .as("%s with %s", first.id(), second.id())
        .isEqualTo(kind);
    assertThat(opposites.kind(second, first))
        .as("%s with %s", second.id(), first.id())
        .isEqualTo(kind);
  }

  @Test
  void strictAntagonists() {
    assertKind(AGONIST_ANTAGONIST, extension, curl);
    assertKind(AGONIST_ANTAGONIST, abduction, move("adduction", "adduction", "hip-adductors"));
    assertKind(
        AGONIST_ANTAGONIST,
        move("calf-raise", "plantarflexion", "calves"),
        move("toe-raise", "dorsiflexion", "shins"));
    assertKind(AGONIST_ANTAGONIST, push, row);
    assertKind(
        AGONIST_ANTAGONIST,
        move("curl", "elbow-flexion", "biceps"),
        move("press-down", "elbow-extension", "triceps"));
  }

  @Test
  void kneeDominantAndHipDominantWorkIsNeverStrict() {
    assertKind(OPPOSITE_REGION, squat, bridge);
    assertKind(OPPOSITE_REGION, squat, hinge);
    assertKind(OPPOSITE_REGION, move("lunge", "lunge", "quadriceps"), hinge);
    assertKind(OPPOSITE_REGION, move("step", "step", "quadriceps"), bridge);
  }

  @Test
  void anExerciseThatHelpsTheOtherIsNoAntagonist() {
    Exercise curlHelped =
        builder("helped", "knee-flexion", "hamstrings").withSecondary("quadriceps").build();
    assertKind(OPPOSITE_REGION, extension, curlHelped);
  }

  @Test
  void twoPullsOrTwoPushesOpposeEachOtherInNothing() {
    Exercise uprightRow = move("upright-row", "pull", "chest");
    assertKind(MIXED, row, uprightRow);
    assertKind(MIXED, push, move("dip", "push", "triceps"));
    assertKind(MIXED, push, move("push-back", "push", "upper-back"));
    assertKind(AGONIST_ANTAGONIST, push, move("face-pull", "pull", "upper-back"));
    assertKind(OPPOSITE_REGION, uprightRow, move("leg-pull", "pull", "hamstrings"));
  }

  @Test
  void upperWithLowerAndFrontWithBack() {
    assertKind(OPPOSITE_REGION, push, squat);
    assertKind(OPPOSITE_REGION, row, curl);
    assertKind(OPPOSITE_REGION, push, move("pull-apart", "pull", "triceps"));
    assertKind(OPPOSITE_REGION, extension, move("kick-back", "kick", "gluteus-maximus"));
  }

  @Test
  void theSamePrimaryMuscleIsCompoundAndNeverAntagonist() {
    assertKind(COMPOUND, squat, extension);
    assertKind(COMPOUND, move("both", "lunge", "quadriceps", "hamstrings"), curl);
    assertKind(COMPOUND, move("push-pull", "other", "chest", "upper-back"), row);
    assertKind(COMPOUND, squat, squat);
  }

  @Test
  void theRestIsMixed() {
    assertKind(MIXED, extension, abduction);
    assertKind(MIXED, push, move("twist", "rotation", "obliques"));
    assertKind(
        MIXED,
        move("thruster", "other", "quadriceps", "chest"),
        move("heel-raise", "plantarflexion", "calves"));
  }

  @Test
  void bothSidesOfOneExerciseAreUnilateral() {
    Exercise side = exercise("side").withSides(Sides.UNILATERAL).build();
    assertKind(UNILATERAL, side, side);
    assertKind(COMPOUND, side, plain("other"));
  }

  @Test
  void threePositionsAreAsWeakAsTheirWeakestLink() {
    assertThat(opposites.kind(List.of(extension, curl, extension))).isEqualTo(AGONIST_ANTAGONIST);
    assertThat(opposites.kind(List.of(extension, curl, push))).isEqualTo(OPPOSITE_REGION);
    assertThat(opposites.kind(List.of(extension, squat, curl))).isEqualTo(COMPOUND);
    assertThat(opposites.kind(List.of(extension, curl, abduction))).isEqualTo(MIXED);
  }

  @Test
  void fewerThanTwoAreNoPair() {
    assertThat(opposites.kind(List.of())).isEqualTo(MIXED);
    assertThat(opposites.kind(List.of(squat))).isEqualTo(MIXED);
  }
}

package counterset.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Limitation;
import counterset.model.Muscle;
import counterset.model.Part;
import counterset.model.Region;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whoever comes, with whatever limitation and without any equipment, finds enough to do. Variants
 * count once.
 */
class CoverageMatrixTest {

  private static final Catalogue CATALOGUE = Catalogues.embedded();
  private static final int ANYONE = 3;
  private static final int LIMITED = 2;

  static List<String> targets() {
    return CATALOGUE.muscles().values().stream()
        .filter(Muscle::defaultTarget)
        .map(Muscle::id)
        .toList();
  }

  /** What the body cannot do; to stay seated or standing is a choice, which may leave little. */
  static Collection<String> limitations() {
    return CATALOGUE.limitations().keySet().stream().filter(id -> !id.endsWith("-only")).toList();
  }

  private static Stream<Exercise> withNothing(Part part) {
    return CATALOGUE.exercises(part).stream().filter(exercise -> exercise.needs().isEmpty());
  }

  private static Set<String> roots(Stream<Exercise> exercises) {
    return exercises.map(Exercise::root).collect(Collectors.toSet());
  }

  @ParameterizedTest
  @MethodSource("targets")
  void everyTargetHasThreeExercisesWithNothing(String muscle) {
    assertThat(
            roots(withNothing(Part.MAIN).filter(exercise -> exercise.primary().contains(muscle))))
        .hasSizeGreaterThanOrEqualTo(ANYONE);
  }

  @ParameterizedTest
  @MethodSource("limitations")
  void everyTargetHasTwoExercisesWithNothingForEveryLimitation(String id) {
    Limitation limitation = CATALOGUE.limitations().get(id);
    for (String muscle : targets()) {
      Stream<Exercise> suitable =
          withNothing(Part.MAIN)
              .filter(
                  exercise -> exercise.primary().contains(muscle) && limitation.allows(exercise));
      assertThat(roots(suitable)).as("%s for %s", muscle, id).hasSizeGreaterThanOrEqualTo(LIMITED);
    }
  }

  @ParameterizedTest
  @MethodSource("limitations")
  void everyRegionHasWarmUpMovesForEveryLimitation(String id) {
    Limitation limitation = CATALOGUE.limitations().get(id);
    for (Region region : Region.values()) {
      Stream<Exercise> suitable =
          withNothing(Part.WARM_UP).filter(move -> isOf(region, move) && limitation.allows(move));
      assertThat(roots(suitable)).as("%s for %s", region, id).hasSizeGreaterThanOrEqualTo(LIMITED);
    }
  }

  @ParameterizedTest
  @MethodSource("targets")
  void everyTargetHasAStretchWithNothing(String muscle) {
    assertThat(withNothing(Part.COOL_DOWN)).anyMatch(stretch -> stretch.primary().contains(muscle));
  }

  @ParameterizedTest
  @MethodSource("limitations")
  void everyRegionHasAStretchForEveryLimitation(String id) {
    Limitation limitation = CATALOGUE.limitations().get(id);
    for (Region region : Region.values()) {
      assertThat(withNothing(Part.COOL_DOWN))
          .as("%s for %s", region, id)
          .anyMatch(stretch -> isOf(region, stretch) && limitation.allows(stretch));
    }
  }

  private static boolean isOf(Region region, Exercise exercise) {
    return exercise.primary().stream()
        .anyMatch(muscle -> CATALOGUE.muscles().get(muscle).region() == region);
  }

  @Test
  void theCatalogueIsLarge() {
    assertThat(CATALOGUE.exercises(Part.MAIN)).hasSizeGreaterThanOrEqualTo(160);
    assertThat(CATALOGUE.exercises(Part.WARM_UP)).hasSizeGreaterThanOrEqualTo(24);
    assertThat(CATALOGUE.exercises(Part.COOL_DOWN)).hasSizeGreaterThanOrEqualTo(24);
  }

  @Test
  void warmUpMovesNeedNoEquipment() {
    assertThat(CATALOGUE.exercises(Part.WARM_UP)).allMatch(move -> move.needs().isEmpty());
  }

  @Test
  void everyMuscleGroupAndLevelAndEquipmentIsUsed() {
    List<Exercise> main = CATALOGUE.exercises(Part.MAIN);
    assertThat(main.stream().flatMap(exercise -> exercise.primary().stream()))
        .containsAll(CATALOGUE.muscles().keySet());
    assertThat(main.stream().map(Exercise::level)).contains(1, 2, 3);
    assertThat(main.stream().map(Exercise::intensity)).contains(1, 2, 3);
    assertThat(
            main.stream()
                .flatMap(exercise -> exercise.needs().stream())
                .map(need -> need.equipment()))
        .containsAll(CATALOGUE.equipment().keySet());
  }

  @Test
  void thePatternsOfEveryRegionAreThere() {
    assertThat(CATALOGUE.exercises(Part.MAIN).stream().map(Exercise::pattern))
        .contains(
            "squat",
            "lunge",
            "step",
            "hinge",
            "bridge",
            "hip-extension",
            "abduction",
            "adduction",
            "knee-extension",
            "knee-flexion",
            "plantarflexion",
            "dorsiflexion",
            "push",
            "pull",
            "raise",
            "elbow-flexion",
            "elbow-extension",
            "brace",
            "rotation",
            "anti-rotation",
            "lateral-flexion",
            "trunk-flexion",
            "trunk-extension",
            "carry");
  }
}

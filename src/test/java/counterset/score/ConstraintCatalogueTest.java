package counterset.score;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The list of the constraints, and what each says of itself. */
class ConstraintCatalogueTest {

  /** Levels and default weights as the planning model of the design states them. */
  private static final Map<String, Integer> HARD =
      Map.of(
          "exerciseRepeated",
          1,
          "sidesSplit",
          1,
          "equipmentMissing",
          1,
          "unsafeForClient",
          1,
          "changeoverTooLong",
          1,
          "clockOverrun",
          1,
          "keptMoved",
          1,
          "aboveLevel",
          1,
          "excluded",
          1);

  private static final Map<String, Integer> TRACKS_HARD =
      Map.of("modificationMissing", 1, "trackRepeated", 1);
  private static final Map<String, Integer> MEDIUM =
      Map.of("targetUncovered", 1, "supersetEmpty", 1, "equipmentUnused", 1);
  private static final Map<String, Integer> SOFT =
      Map.ofEntries(
          Map.entry("equipmentChange", 5),
          Map.entry("changeoverSeconds", 1),
          Map.entry("floorTrip", 8),
          Map.entry("opposingPair", 1),
          Map.entry("sameMuscleInARow", 1),
          Map.entry("unevenVolume", 2),
          Map.entry("lightBeforeHeavy", 2),
          Map.entry("familyAgain", 10),
          Map.entry("jointAgain", 6),
          Map.entry("unloaded", 8),
          Map.entry("tooEasy", 3),
          Map.entry("oneSidedShare", 6),
          Map.entry("usedRecently", 1),
          Map.entry("likes", 10),
          Map.entry("dislikes", 10),
          Map.entry("modificationAwkward", 1));

  /** Constraints that the design does not list. */
  private static final Set<String> OUR_OWN =
      Set.of("includeMissing", "tooLight", "mainLiftMissing");

  private static final List<Class<?>> TESTS =
      List.of(
          SafetyConstraintsTest.class,
          HandlingConstraintsTest.class,
          PairingConstraintsTest.class,
          CoverageConstraintsTest.class,
          TasteConstraintsTest.class,
          TrackConstraintsTest.class,
          LoadConstraintsTest.class,
          VarietyConstraintsTest.class);

  /** One name in three places: the class, the id, the tests. */
  @ParameterizedTest
  @MethodSource("all")
  void theIdIsTheNameOfTheClass(Constraint constraint) {
    String name = constraint.getClass().getSimpleName();
    assertThat(constraint.id())
        .isEqualTo(Character.toLowerCase(name.charAt(0)) + name.substring(1));
  }

  private static List<Constraint> all() {
    return Stream.<Constraint>concat(
            Constraints.OF_SESSIONS.stream(), Constraints.OF_WEEKS.stream())
        .toList();
  }

  @ParameterizedTest
  @MethodSource("all")
  void everyConstraintHasATestOfItsName(Constraint constraint) {
    Stream<String> tests =
        TESTS.stream()
            .flatMap(test -> Arrays.stream(test.getDeclaredMethods()))
            .map(Method::getName);
    assertThat(tests)
        .as("tests of %s", constraint.id())
        .anyMatch(name -> name.startsWith(constraint.id()));
  }

  @ParameterizedTest
  @MethodSource("all")
  void everyConstraintSaysWhatItWantsAndWhatItsUnitIs(Constraint constraint) {
    assertThat(constraint.sentence()).matches("[A-Z].*[a-z]\\.");
    assertThat(constraint.unit()).isNotBlank();
    assertThat(constraint.defaultWeight()).isPositive();
  }

  /** A class that nobody listed would measure nothing. */
  @Test
  void everyConstraintIsListed() {
    assertThat(
            new ClassFileImporter()
                .importPackages("counterset.score").stream()
                    .filter(type -> type.isAssignableTo(Constraint.class))
                    .filter(type -> !type.getModifiers().contains(JavaModifier.ABSTRACT))
                    .map(JavaClass::getSimpleName))
        .containsExactlyInAnyOrderElementsOf(
            all().stream().map(constraint -> constraint.getClass().getSimpleName()).toList());
  }

  @Test
  void levelsAndDefaultWeightsAreThoseOfTheDesign() {
    Map<String, String> expected = new TreeMap<>();
    HARD.forEach((id, weight) -> expected.put(id, Level.HARD + " " + weight));
    TRACKS_HARD.forEach((id, weight) -> expected.put(id, Level.HARD + " " + weight));
    MEDIUM.forEach((id, weight) -> expected.put(id, Level.MEDIUM + " " + weight));
    SOFT.forEach((id, weight) -> expected.put(id, Level.SOFT + " " + weight));

    Map<String, String> actual = new TreeMap<>();
    Constraints.OF_SESSIONS.stream()
        .filter(constraint -> !OUR_OWN.contains(constraint.id()))
        .forEach(
            constraint ->
                actual.put(constraint.id(), constraint.level() + " " + constraint.defaultWeight()));
    assertThat(actual).isEqualTo(expected);
  }

  @ParameterizedTest
  @MethodSource("all")
  void onlyPairsAndLikesAreRewards(Constraint constraint) {
    assertThat(constraint.isReward())
        .isEqualTo(Set.of("opposingPair", "likes").contains(constraint.id()));
  }
}

package counterset.planning.constraints;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.stream.Constraint;
import counterset.planning.constraints.SessionConstraint.Level;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** One name in three places: the method that defines a constraint, its id, its tests. */
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

  /** Constraints of the design that belong to tracks, which need not exist yet. */
  private static final Set<String> OF_TRACKS =
      Set.of("modificationMissing", "trackRepeated", "modificationAwkward");

  private static final List<Class<?>> TESTS =
      List.of(
          SafetyConstraintsTest.class,
          HandlingConstraintsTest.class,
          PairingConstraintsTest.class,
          CoverageConstraintsTest.class,
          TasteConstraintsTest.class,
          TrackConstraintsTest.class);

  private static List<String> ids() {
    return Stream.of(SessionConstraint.values()).map(SessionConstraint::id).toList();
  }

  @Test
  void everyConstraintIsDefinedByAMethodOfItsName() {
    Stream<String> methods =
        Check.TOPICS.stream()
            .flatMap(topic -> Arrays.stream(topic.getDeclaredMethods()))
            .filter(method -> method.getReturnType() == Constraint.class)
            .map(Method::getName);
    assertThat(methods).containsExactlyInAnyOrderElementsOf(ids());
  }

  @Test
  void idsAreTheConstantsInCamelCase() {
    assertThat(
            Stream.of(SessionConstraint.values()).map(constraint -> camelCase(constraint.name())))
        .containsExactlyElementsOf(ids())
        .doesNotHaveDuplicates();
  }

  private static String camelCase(String constant) {
    StringBuilder text = new StringBuilder();
    for (char letter : constant.toCharArray()) {
      boolean upper = text.length() > 0 && text.charAt(text.length() - 1) == '_';
      if (upper) {
        text.setLength(text.length() - 1);
      }
      text.append(upper || letter == '_' ? letter : Character.toLowerCase(letter));
    }
    return text.toString();
  }

  @ParameterizedTest
  @EnumSource
  void everyConstraintHasATestOfItsName(SessionConstraint constraint) {
    Stream<String> tests =
        TESTS.stream()
            .flatMap(test -> Arrays.stream(test.getDeclaredMethods()))
            .map(Method::getName);
    assertThat(tests)
        .as("tests of %s", constraint.id())
        .anyMatch(name -> name.startsWith(constraint.id()));
  }

  @ParameterizedTest
  @EnumSource
  void everyConstraintSaysWhatItWantsAndWhatItsUnitIs(SessionConstraint constraint) {
    assertThat(constraint.sentence()).matches("[A-Z].*[a-z]\\.");
    assertThat(constraint.unit()).isNotBlank();
    assertThat(constraint.defaultWeight()).isPositive();
  }

  @Test
  void levelsAndDefaultWeightsAreThoseOfTheDesign() {
    Map<String, String> expected = new TreeMap<>();
    HARD.forEach((id, weight) -> expected.put(id, Level.HARD + " " + weight));
    TRACKS_HARD.forEach((id, weight) -> expected.put(id, Level.HARD + " " + weight));
    MEDIUM.forEach((id, weight) -> expected.put(id, Level.MEDIUM + " " + weight));
    SOFT.forEach((id, weight) -> expected.put(id, Level.SOFT + " " + weight));
    OF_TRACKS.stream().filter(id -> !ids().contains(id)).forEach(expected::remove);

    Map<String, String> actual = new TreeMap<>();
    Stream.of(SessionConstraint.values())
        .filter(constraint -> !OUR_OWN.contains(constraint.id()))
        .forEach(
            constraint ->
                actual.put(constraint.id(), constraint.level() + " " + constraint.defaultWeight()));
    assertThat(actual).isEqualTo(expected);
  }

  @ParameterizedTest
  @EnumSource
  void onlyPairsAndLikesAreRewards(SessionConstraint constraint) {
    assertThat(constraint.isReward())
        .isEqualTo(Set.of("opposingPair", "likes").contains(constraint.id()));
  }
}

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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The list of the constraints, and what each says of itself. */
class ConstraintCatalogueTest {

  /** The levels as the planning model of the design states them; whatever is not here is soft. */
  private static final Set<String> HARD =
      Set.of(
          "exerciseRepeated",
          "sidesSplit",
          "equipmentMissing",
          "unsafeForClient",
          "changeoverTooLong",
          "clockOverrun",
          "keptMoved",
          "aboveLevel",
          "excluded",
          "modificationMissing",
          "trackRepeated");

  private static final Set<String> MEDIUM =
      Set.of(
          "targetUncovered",
          "patternMissing",
          "supersetEmpty",
          "equipmentUnused",
          "includeMissing");

  private static final List<Class<?>> TESTS =
      List.of(
          SafetyConstraintsTest.class,
          HandlingConstraintsTest.class,
          PairingConstraintsTest.class,
          CoverageConstraintsTest.class,
          TasteConstraintsTest.class,
          TrackConstraintsTest.class,
          LoadConstraintsTest.class,
          VarietyConstraintsTest.class,
          MeritConstraintsTest.class,
          PatternConstraintsTest.class,
          CourseConstraintsTest.class);

  /** What a search asks of a pair beforehand has the name that this constraint would have. */
  private static final Map<String, String> NAMED_OTHERWISE = Map.of("PairFit", "PairWorth");

  /** One name in three places: the class, the id, the tests. */
  @ParameterizedTest
  @MethodSource("all")
  void theIdIsTheNameOfTheClass(Constraint constraint) {
    String own = constraint.getClass().getSimpleName();
    String name = NAMED_OTHERWISE.getOrDefault(own, own);
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
  void levelsAreThoseOfTheDesign() {
    for (PlanConstraint constraint : Constraints.OF_SESSIONS) {
      Level expected =
          HARD.contains(constraint.id())
              ? Level.HARD
              : MEDIUM.contains(constraint.id()) ? Level.MEDIUM : Level.SOFT;
      assertThat(constraint.level()).as(constraint.id()).isEqualTo(expected);
    }
    assertThat(Constraints.ids(Constraints.OF_SESSIONS)).containsAll(HARD).containsAll(MEDIUM);
  }

  @ParameterizedTest
  @MethodSource("all")
  void onlyLikesAreRewards(Constraint constraint) {
    assertThat(constraint.isReward()).isEqualTo(constraint.id().equals("likes"));
  }
}

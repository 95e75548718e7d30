package counterset.explain;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.RandomClasses;
import counterset.model.At;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.report.ClassPlans;
import counterset.report.Plans;
import counterset.search.Replacement;
import counterset.search.Replacements;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class DifferenceWordsTest {

  private static final int PAIRS = 400;

  @Test
  void thePointsOfAllDifferencesAddUpToTheDifferenceOfTheScores() {
    Set<String> told = new HashSet<>();
    for (long seed = 1; seed <= PAIRS; seed++) {
      Plan from = RandomClasses.of(Plans.CATALOGUE, seed);
      Plan to = RandomClasses.another(Plans.CATALOGUE, from.problem(), seed + PAIRS);
      List<Difference> differences = DifferenceWords.differences(from, to, Plans.CATALOGUE);
      assertThat(sums(differences)).as("seed %d", seed).isEqualTo(difference(from, to));
      assertThat(differences)
          .as("seed %d", seed)
          .allSatisfy(
              difference -> {
                assertThat(difference.points()).isNotZero();
                assertThat(difference.sentence()).matches("[A-Z0-9].*[^.]");
                assertThat(difference.sentence()).doesNotContain("null", "  ", "Optional", " ,");
              });
      differences.forEach(difference -> told.add(difference.constraint()));
    }
    assertThat(told).hasSizeGreaterThan(28);
  }

  @Test
  void theWayBackHasTheSamePointsTheOtherWayRound() {
    for (long seed = 1; seed <= 50; seed++) {
      Plan from = RandomClasses.of(Plans.CATALOGUE, seed);
      Plan to = RandomClasses.another(Plans.CATALOGUE, from.problem(), seed + PAIRS);
      assertThat(byConstraint(from, to, 1))
          .as("seed %d", seed)
          .isEqualTo(byConstraint(to, from, -1));
      assertThat(DifferenceWords.of(from, from, Plans.CATALOGUE)).isEmpty();
    }
  }

  private static Map<String, Integer> byConstraint(Plan from, Plan to, int sign) {
    Map<String, Integer> sums = new TreeMap<>();
    DifferenceWords.differences(from, to, Plans.CATALOGUE)
        .forEach(it -> sums.merge(it.constraint(), sign * it.points(), Integer::sum));
    return sums;
  }

  @Test
  void aCoachReadsWhatOneExchangeDoes() {
    assertThat(swapped(Plans.legs(), "1A", "ankle-weight-prone-leg-lift"))
        .containsExactlyInAnyOrder(
            "The changeover is 16 s too long (1A to 1B): breaks a rule",
            "Changing over takes longer",
            "Light work comes before heavier work more often");
    assertThat(swapped(Plans.legs(), "2A", "dumbbell-squat"))
        .containsExactlyInAnyOrder(
            "Light work comes before heavier work more often",
            "One-sided supersets are further from their share of the session",
            "The pairs rest each other better",
            "No longer the same movement pattern before and after a rest (1B to 2A, 2B to 3A)",
            "No longer gluteus maximus twice running (2B to 3A)");
    assertThat(swapped(ClassPlans.good(), "3A", "hip-hinge"))
        .containsExactlyInAnyOrder(
            "For sore knees and for no jumping, the changeover is 1 s too long (3A to 3B): breaks a"
                + " rule",
            "The changeover is 1 s too long (3A to 3B): breaks a rule",
            "For every track, abdominals: 1 set too few: a wish less",
            "Abdominals: 1 set too few: a wish less",
            "The sets are shared out less evenly (gluteus maximus, abdominals and hamstrings)",
            "Changing over takes longer",
            "For no floor plus sore knees, Standing crunch, which did not quite fit the moment, goes",
            "Hip hinge leaves the client's equipment lying",
            "Hip hinge is easy for this client",
            "Hip hinge has a harder version that suits",
            "One turns over on the floor less often",
            "Hip hinge could be harder",
            "Hip hinge is below the client's level");
  }

  /** The sentences without their points, which go by the weights. */
  private static List<String> swapped(Plan plan, String at, String exercise) {
    Replacements replacements = new Replacements(Plans.CATALOGUE, "test");
    Replacement chosen =
        replacements.of(plan, At.parse(at).orElseThrow()).stream()
            .filter(it -> it.exercise().id().equals(exercise))
            .findFirst()
            .orElseThrow();
    return DifferenceWords.of(plan, replacements.plan(plan, chosen), Plans.CATALOGUE).stream()
        .map(sentence -> sentence.replaceFirst("[:,] [+-][0-9]+$", ""))
        .toList();
  }

  private static Map<String, Integer> sums(List<Difference> differences) {
    Map<String, Integer> sums = new TreeMap<>(Map.of("hard", 0, "medium", 0, "soft", 0));
    differences.forEach(
        difference -> sums.merge(difference.level(), difference.points(), Integer::sum));
    return sums;
  }

  private static Map<String, Integer> difference(Plan from, Plan to) {
    PlanScore before = from.score();
    PlanScore after = to.score();
    Map<String, Integer> levels = new TreeMap<>();
    levels.put("hard", after.hard() - before.hard());
    levels.put("medium", after.medium() - before.medium());
    levels.put("soft", after.soft() - before.soft());
    return levels;
  }
}

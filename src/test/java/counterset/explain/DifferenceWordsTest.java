package counterset.explain;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.RandomClasses;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.report.Plans;
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

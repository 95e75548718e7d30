package counterset.search;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.Problems;
import counterset.fixture.RandomSessions;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.score.ExerciseFilter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said without solving agrees with what solving finds; real catalogue. */
class OutlookTest {

  private static final Catalogue CATALOGUE = Catalogues.embedded();

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void noPlanIsBetterThanTheBound(long seed) {
    Problem problem = new RandomSessions(CATALOGUE, seed).problem().problem();
    Plan plan = new SessionPlanner(CATALOGUE, "test").plan(problem, Limit.of(Effort.QUICK));
    Outlook outlook = new Outlook(problem, CATALOGUE);
    assertThat(Goal.HARD.shortfall(plan))
        .as("hard, seed %s", seed)
        .isGreaterThanOrEqualTo(outlook.hardShortfall());
    if (plan.score().feasible()) {
      assertThat(-plan.score().medium())
          .as("medium, seed %s", seed)
          .isGreaterThanOrEqualTo(outlook.mediumShortfall());
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void wishesAllowWhatTheFilterLeaves(long seed) {
    Problem problem = new RandomSessions(CATALOGUE, seed).problem().problem();
    List<String> wanted = problem.keep().stream().map(Keep::exercise).toList();
    List<Exercise> left =
        new ExerciseFilter(problem, CATALOGUE)
            .main().stream()
                .filter(e -> !wanted.contains(e.id()) && !problem.include().contains(e.id()))
                .toList();
    Wishes wishes = new Wishes(problem, CATALOGUE);
    assertThat(wishes.allowed()).as("seed %s", seed).containsAll(left);
    assertThat(new Outlook(problem, CATALOGUE).pool())
        .as("seed %s", seed)
        .filteredOn(e -> !wanted.contains(e.id()) && !problem.include().contains(e.id()))
        .isEqualTo(left);
  }

  @Test
  void aMedicalConditionIsNeverOfferedAsAChange() {
    Problem problem =
        Problems.of(CATALOGUE, Region.LOWER)
            .limited(CATALOGUE.limitations().keySet().toArray(String[]::new))
            .problem();
    assertThat(LimitationChanges.of(problem, CATALOGUE))
        .extracting(Change::phrase)
        .contains("allow the floor", "allow kneeling")
        .contains("allow jumping, if the client's body really allows it")
        .contains("drop the limitation sore knees, if the client's body really allows it")
        .noneMatch(phrase -> phrase.contains("pregnancy"))
        .noneMatch(phrase -> phrase.contains("blood"))
        .noneMatch(phrase -> phrase.contains("bone"))
        .noneMatch(phrase -> phrase.contains("balance"));
  }
}

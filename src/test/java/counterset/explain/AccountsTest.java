package counterset.explain;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.explain.Account.Line;
import counterset.explain.Account.Section;
import counterset.model.Plan;
import counterset.report.Plans;
import counterset.report.RandomPlans;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every point is accounted for, once, in words. */
class AccountsTest {

  @TestFactory
  Stream<DynamicTest> theLinesOfAnyPlanAddUpToItsScore() {
    return Stream.iterate(1L, seed -> seed + 1)
        .limit(300)
        .map(seed -> DynamicTest.dynamicTest("seed " + seed, () -> addsUp(RandomPlans.of(seed))));
  }

  @TestFactory
  Stream<DynamicTest> theLinesOfPlansByHandAddUpToTheirScores() {
    return Plans.all().entrySet().stream()
        .map(plan -> DynamicTest.dynamicTest(plan.getKey(), () -> addsUp(plan.getValue())));
  }

  private static void addsUp(Plan plan) {
    List<Section> sections = Accounts.of(plan, Plans.CATALOGUE).sections();
    Map<String, Integer> score =
        Map.of(
            "hard", plan.score().hard(),
            "medium", plan.score().medium(),
            "soft", plan.score().soft());

    score.forEach(
        (level, points) ->
            assertThat(sections.stream().mapToInt(section -> section.points(level)).sum())
                .as(level)
                .isEqualTo(points));
    assertThat(sections.stream().mapToInt(section -> section.lines().size()).sum())
        .isEqualTo((int) plan.matches().stream().filter(match -> match.points() != 0).count());
    for (Section section : sections) {
      for (Line line : section.lines()) {
        assertThat(line.sentence()).isNotBlank().doesNotContain("null", "Optional", "  ");
      }
    }
  }

  /** Among equal points the order is that of the session, 9A before 10A. */
  @Test
  void linesOfEqualPointsFollowTheSession() {
    int compared = 0;
    for (long seed = 1; seed <= 300; seed++) {
      for (Section section : Accounts.of(RandomPlans.of(seed), Plans.CATALOGUE).sections()) {
        for (int i = 1; i < section.lines().size(); i++) {
          Line one = section.lines().get(i - 1);
          Line other = section.lines().get(i);
          if (one.level().equals(other.level())
              && Math.abs(one.points()) == Math.abs(other.points())
              && !one.places().isEmpty()
              && !other.places().isEmpty()) {
            assertThat(one.places().get(0))
                .as("seed " + seed)
                .isLessThanOrEqualTo(other.places().get(0));
            compared++;
          }
        }
      }
    }
    assertThat(compared).isGreaterThan(100);
  }

  @Test
  void aPairIsToldInWordsOfItsOwn() {
    List<Section> sections = Accounts.of(Plans.legs(), Plans.CATALOGUE).sections();
    Section first = sections.get(0);

    assertThat(first.title()).isEqualTo("Goblet squat + Dumbbell Romanian deadlift");
    assertThat(sections.get(1).lines())
        .anyMatch(line -> line.sentence().equals("one exercise, one side and then the other"));
    assertThat(first.notes()).anyMatch(note -> note.startsWith("Trains directly: "));
  }
}

package counterset.compare;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.English;
import counterset.model.Plan;
import counterset.report.Plans;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The sentences name the right plan, and every figure in them is a difference of the plans'. */
class VerdictTest {

  private static final String SQUAT = "dumbbell-partial-squat dumbbell-romanian-deadlift";
  private static final String SUITCASE = "suitcase-deadlift suitcase-deadlift";
  private static final String BARE = "bodyweight-squat hip-hinge";
  private static final String ANKLES = "ankle-weight-leg-curl ankle-weight-front-leg-raise";

  private static List<String> verdict(Plan... plans) {
    return Verdict.of(Comparisons.of(plans), Plans.CATALOGUE);
  }

  private static int points(Plan plan) {
    return plan.score().soft();
  }

  @Test
  void theBetterOfOneProblemWinsByWholePoints() {
    Plan good = Comparisons.dumbbells(6, SQUAT, SUITCASE);
    Plan bare = Comparisons.dumbbells(6, BARE, SUITCASE);
    int more = points(good) - points(bare);
    assertThat(more).isPositive();
    List<String> lines = verdict(bare, good);
    assertThat(lines).hasSize(2);
    assertThat(lines.get(0))
        .startsWith("Option 2 (second): the best. Against option 1: " + more + " points more")
        .contains("equipment in 100 % instead of 50 % of the work")
        .endsWith("want more lifting.");
    assertThat(lines.get(1)).startsWith("Option 1 (first): ").doesNotContain("points more");
  }

  @Test
  void aWorseSessionMayBeAChange() {
    Plan good = Comparisons.dumbbells(6, SUITCASE, SQUAT);
    Plan other = Comparisons.dumbbells(6, "dumbbell-squat dumbbell-calf-raise", SUITCASE);
    List<String> lines = verdict(good, other);
    assertThat(points(good)).isGreaterThan(points(other));
    assertThat(lines.get(1)).startsWith("Option 2 (second): ").contains("1 of its 3 exercises");
  }

  @Test
  void equalPlansAreSaidToBe() {
    Plan plan = Comparisons.dumbbells(6, SQUAT, SUITCASE);
    assertThat(verdict(plan, plan))
        .containsExactly(
            "Option 1 (first): as good as option 2. Against option 2: no difference that counts.",
            "Option 2 (second): no difference that counts.");
  }

  @Test
  void moreEquipmentIsForThoseWhoOwnIt() {
    Plan without = Comparisons.dumbbells(6, SQUAT, BARE);
    Plan with = Comparisons.ankleWeights(6, SQUAT, ANKLES);
    int more = points(with) - points(without);
    List<String> lines = verdict(without, with);
    String winner = more > 0 ? "Option 2 (second)" : "Option 1 (first)";
    assertThat(lines.get(0))
        .startsWith(winner + ": the best. Against option ")
        .contains(English.count(Math.abs(more), "point") + " more over the same 6 minutes");
    assertThat(String.join("\n", lines))
        .contains("clients who own ankle weights")
        .contains("clients who have no ankle weights");
    assertThat(lines.stream().filter(it -> it.startsWith("Option 2")).findFirst().orElseThrow())
        .contains("own ankle weights")
        .doesNotContain("have no ankle weights");
    int fetched = Facts.of(with).fetched() - Facts.of(without).fetched();
    assertThat(fetched).isEqualTo(1);
    assertThat(String.join("\n", lines))
        .contains(more > 0 ? "1 more thing to fetch" : "1 fewer thing to fetch");
  }

  @Test
  void lengthsAreComparedAfterThePlansOfEach() {
    Plan small = Comparisons.dumbbells(4, SQUAT);
    Plan bare = Comparisons.dumbbells(4, BARE);
    Plan large = Comparisons.dumbbells(6, SQUAT, SUITCASE);
    List<String> lines = verdict(large, bare, small);
    assertThat(lines).hasSize(3);
    assertThat(lines.get(0))
        .startsWith("Option 3 (third): the best in 4 minutes. Against option 2");
    assertThat(lines.get(1)).startsWith("Option 2 (second): ");
    assertThat(lines.get(2))
        .startsWith(
            "6 minutes instead of 4 (option 1, not 3): 1 superset more, but "
                + (points(small) - points(large))
                + " points less in all")
        .contains("Better for clients who have the time")
        .contains("the shorter one for clients who have only 4 minutes");
  }

  @Test
  void whomASessionSuitsGoesBeforeItsPoints() {
    Plan free = Comparisons.dumbbells(6, SQUAT, SUITCASE);
    Plan bare = Comparisons.dumbbells(6, BARE, SUITCASE);
    Plan sore = Comparisons.soreKnees(6, SQUAT, SUITCASE);
    List<String> lines = verdict(sore, bare, free);
    assertThat(lines.get(0))
        .startsWith("Option 3 (third): the best for clients without limitations.");
    assertThat(lines)
        .last()
        .asString()
        .startsWith("For clients with \"sore knees\" (option 1, not 3): ")
        .endsWith("Whom a session suits goes before its points.");
    assertThat(lines).noneMatch(line -> line.startsWith("Option 1"));
  }

  @Test
  void whatCannotBeLedIsNoChoice() {
    Plan broken = Comparisons.dumbbells(6, SQUAT, SQUAT);
    Plan good = Comparisons.dumbbells(6, SQUAT, SUITCASE);
    assertThat(verdict(broken, good))
        .containsExactly("Option 2 (second) is the only one that can be led.");
    assertThat(verdict(broken, broken)).containsExactly("None of these can be led.");
    assertThat(verdict(broken, good, good))
        .hasSize(3)
        .last()
        .isEqualTo("Option 1 (first) cannot be led as it is.");
  }
}

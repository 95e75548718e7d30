package counterset.compare;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Changeover;
import counterset.model.IntervalKind;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.report.Plans;
import counterset.report.RandomPlans;
import counterset.search.Options;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class ComparisonTest {

  private static final String SQUAT = "dumbbell-partial-squat dumbbell-romanian-deadlift";
  private static final String BARE = "bodyweight-squat hip-hinge";
  private static final String SUITCASE = "suitcase-deadlift suitcase-deadlift";

  @Property(tries = 200)
  void figuresAreThePlansOwn(@ForAll long seed) {
    Plan plan = RandomPlans.of(seed);
    Facts facts = Facts.of(plan);
    assertThat(facts.points()).isEqualTo(sum(plan, "soft"));
    assertThat(facts.medium()).isEqualTo(sum(plan, "medium"));
    assertThat(facts.hard()).isEqualTo(sum(plan, "hard"));
    assertThat(facts.brokenRules() > 0).isEqualTo(facts.hard() < 0);
    assertThat(facts.unmetWishes() > 0).isEqualTo(facts.medium() < 0);
    assertThat(facts.seconds()).isEqualTo(plan.timeline().isEmpty() ? 0 : end(plan));
    assertThat(facts.handled())
        .isEqualTo(
            plan.changeovers().stream().mapToInt(c -> c.takeOff().size() + c.putOn().size()).sum());
    assertThat(facts.changeover())
        .isEqualTo(plan.changeovers().stream().mapToInt(Changeover::seconds).sum());
    assertThat(facts.supersets())
        .isEqualTo(
            (int)
                plan.timeline().stream()
                    .filter(it -> it.kind() == IntervalKind.WORK)
                    .filter(it -> it.exercise().isPresent())
                    .map(it -> it.at().orElseThrow().superset())
                    .distinct()
                    .count());
  }

  private static int sum(Plan plan, String level) {
    return plan.score().lines().stream()
        .filter(line -> line.level().equals(level))
        .mapToInt(PlanScore.Line::score)
        .sum();
  }

  private static int end(Plan plan) {
    return plan.timeline().get(plan.timeline().size() - 1).end();
  }

  @Property(tries = 100)
  void rowsAddUpToTheScores(@ForAll long seed) {
    Comparison comparison =
        Comparisons.of(RandomPlans.of(seed), RandomPlans.of(seed + 1), RandomPlans.of(seed + 2));
    List<ConstraintRow> rows = ConstraintRow.of(comparison);
    for (Compared it : comparison.all()) {
      int at = it.number() - 1;
      assertThat(
              rows.stream()
                  .filter(row -> row.level().equals("soft"))
                  .mapToInt(row -> row.points().get(at))
                  .sum())
          .as("seed %d, plan %d", seed, it.number())
          .isEqualTo(it.facts().points());
    }
    assertThat(rows.stream().map(ConstraintRow::level).distinct())
        .containsExactly("hard", "medium", "soft");
    List<Double> spreads =
        rows.stream().filter(row -> row.level().equals("soft")).map(ConstraintRow::spread).toList();
    assertThat(spreads).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    assertThat(rows).allSatisfy(row -> assertThat(row.topic()).isNotBlank().doesNotContain(":"));
  }

  @Test
  void whatCanBeLedGoesFirstThenWishesThenPoints() {
    Plan good = Comparisons.dumbbells(6, SQUAT, SUITCASE);
    Plan half = Comparisons.dumbbells(6, SQUAT);
    Plan twice = Comparisons.dumbbells(6, SQUAT, SQUAT);
    Comparison comparison = Comparisons.of(twice, half, good);
    assertThat(comparison.ranked()).extracting(Compared::number).containsExactly(3, 2, 1);
    assertThat(comparison.sameProblem()).isTrue();
    assertThat(comparison.feasible()).extracting(Compared::number).containsExactly(2, 3);
  }

  @Test
  void differentProblemsAreRankedByPointsASuperset() {
    Plan one = Comparisons.dumbbells(4, SQUAT);
    Plan two = Comparisons.dumbbells(6, SQUAT, SUITCASE);
    Comparison comparison = Comparisons.of(one, two);
    Facts here = comparison.all().get(0).facts();
    Facts there = comparison.all().get(1).facts();
    assertThat(comparison.sameProblem()).isFalse();
    assertThat(comparison.sameShape()).isFalse();
    assertThat(here.supersets()).isEqualTo(1);
    assertThat(there.supersets()).isEqualTo(2);
    int first = here.points() >= there.points() / 2.0 ? 1 : 2;
    assertThat(here.points()).isNotEqualTo(there.points());
    assertThat(comparison.ranked().get(0).number()).isEqualTo(first);
  }

  @Test
  void aTitleOrASeedMakesNoOtherProblem() {
    Plan one = Plans.legs();
    Plan other =
        Plans.score(one.problem().withSeed(7), one.solver(), List.of(), List.of(), "goblet-squat");
    assertThat(Comparisons.of(one, other).sameProblem()).isTrue();
  }

  @Test
  void sharedExercisesCountVariantsAsTheSame() {
    Plan one = Comparisons.dumbbells(6, SQUAT, SUITCASE);
    Plan other = Comparisons.dumbbells(6, SUITCASE, "dumbbell-squat dumbbell-calf-raise");
    List<Shared> pairs = Shared.of(Comparisons.of(one, other, one));
    assertThat(pairs)
        .extracting(it -> it.one() + "-" + it.other())
        .containsExactly("1-2", "1-3", "2-3");
    assertThat(pairs.get(1).exercises()).isEqualTo(3).isEqualTo(pairs.get(1).ofOne());
    assertThat(pairs.get(0).exercises()).isEqualTo(pairs.get(2).exercises()).isEqualTo(1);
    assertThat(Options.differ(one, other)).isTrue();
  }

  @Test
  void aTradeOffSaysWhichPlanBeatsWhich() {
    Plan still = Comparisons.dumbbells(6, SQUAT);
    Plan busy = Comparisons.dumbbells(6, SQUAT, SUITCASE);
    Plan bare = Comparisons.dumbbells(6, BARE, SUITCASE);
    TradeOff loads = TradeOff.of(Comparisons.of(still, busy, bare)).get(1);
    TradeOff.Point one = loads.points().get(0);
    assertThat(one.onFront()).isTrue();
    assertThat(one.up()).isEqualTo(100);
    assertThat(one.across()).isZero();
    assertThat(loads.points().get(1).beatenBy()).containsExactly(1);
    assertThat(loads.points().get(2).up()).isEqualTo(50);
    assertThat(loads.points().get(2).beatenBy()).containsExactly(1);
  }
}

package counterset.search;

import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.THURSDAY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterset.catalogue.Catalogues;
import counterset.fixture.Problems;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.MovementPattern;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.EarlierSession;
import counterset.model.WeekSession;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A block, planned with the real catalogue; short sessions, so that the tests are. */
class BlockPlannerTest {

  private static final int WEEKS = 4;
  private static final int MINUTES = 10;
  private static final LocalDate START = LocalDate.of(2026, 3, 9);

  private final Catalogue catalogue = Catalogues.embedded();

  private WeekProblem problem() {
    Problems lower =
        Problems.of(catalogue, Region.LOWER).minutes(MINUTES).owning(Problems.two("dumbbell"));
    return new WeekProblem(
        "Test",
        List.of(
            new WeekSession(MONDAY, lower.done(START).problem()),
            new WeekSession(THURSDAY, lower.problem())),
        List.of(new EarlierSession(3, List.of("gone"), Map.of())),
        Map.of(),
        false,
        Map.of(),
        1);
  }

  private static Set<String> used(WeekPlan week, Function<Exercise, String> what) {
    return week.plans().stream()
        .flatMap(plan -> plan.session().work())
        .map(what)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> inBoth(Set<String> one, Set<String> other) {
    Set<String> both = new TreeSet<>(one);
    both.retainAll(other);
    return both;
  }

  @Test
  void everyWeekHasItsClockAndItsDates() {
    WeekProblem problem = problem();
    List<WeekPlan> block =
        new BlockPlanner(catalogue, "test").plan(problem, WEEKS, Limit.of(Effort.QUICK));
    assertThat(block).hasSize(WEEKS).allMatch(week -> week.score().hard() == 0);

    for (int week = 1; week <= WEEKS; week++) {
      WeekPlan plan = block.get(week - 1);
      for (int day = 0; day < plan.plans().size(); day++) {
        Plan session = plan.plans().get(day);
        assertThat(session.problem().clock())
            .isEqualTo(BlockProgress.clock(problem.sessions().get(day).problem(), week));
        assertThat(session.totals().supersets())
            .isEqualTo(block.get(0).plans().get(day).totals().supersets());
        assertThat(session.totals().seconds()).isLessThanOrEqualTo(60 * MINUTES);
      }
      assertThat(plan.plans().get(0).problem().date())
          .isEqualTo(Optional.of(START.plusWeeks(week - 1L)));
      assertThat(plan.plans().get(1).problem().date()).isEmpty();
    }
    assertThat(block.get(3).problem().earlier())
        .extracting(EarlierSession::daysBeforeMonday)
        .as("the journal's, then two sessions in each of two weeks")
        .containsExactly(24, 14, 11, 7, 4);
    int work = block.get(0).plans().get(0).totals().workSeconds();
    assertThat(block.get(2).plans().get(0).totals().workSeconds()).isGreaterThan(work);
    assertThat(block.get(3).plans().get(0).totals().workSeconds()).isLessThan(work);
  }

  /** So that they can be made harder from week to week; a block of four weeks is one cycle. */
  @Test
  void mainLiftsStayAndAccessoriesChange() {
    Problem legs = Problems.of(catalogue, Region.LOWER).owning(Problems.two("dumbbell")).problem();
    WeekProblem week =
        new WeekProblem(
            "Test",
            List.of(new WeekSession(MONDAY, legs), new WeekSession(THURSDAY, legs)),
            List.of(),
            Map.of(),
            false,
            Map.of(),
            1);
    List<WeekPlan> block =
        new BlockPlanner(catalogue, "test").plan(week, 2, Limit.of(Effort.QUICK));
    int accessoriesOfAll = 0;
    int again = 0;
    for (int day = 0; day < 2; day++) {
      Plan first = block.get(0).plans().get(day);
      Set<String> main = mainLifts(first);
      Set<String> second = ids(block.get(1).plans().get(day));
      assertThat(main).as("main lifts of day %d", day).hasSizeGreaterThanOrEqualTo(3);
      assertThat(second).as("of day %d again", day).containsAll(main);
      Set<String> accessories = ids(first);
      accessories.removeAll(main);
      accessoriesOfAll += accessories.size();
      again += inBoth(accessories, second).size();
    }
    assertThat(again).as("accessories that come again").isLessThanOrEqualTo(accessoriesOfAll / 2);
  }

  /** The first exercise for several joints of each pattern whose loaded forms are big lifts. */
  private Set<String> mainLifts(Plan plan) {
    Set<String> patterns = new TreeSet<>();
    Set<String> main = new TreeSet<>();
    plan.session()
        .work()
        .filter(Exercise::multiJoint)
        .forEach(
            exercise -> {
              MovementPattern pattern = catalogue.wants().patternOf(exercise).orElseThrow();
              if (pattern.big() && patterns.add(pattern.id())) {
                main.add(exercise.id());
              }
            });
    return main;
  }

  private static Set<String> ids(Plan plan) {
    return plan.session().work().map(Exercise::id).collect(Collectors.toCollection(TreeSet::new));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 13})
  void tooManyOrTooFewWeeksAreRefused(int weeks) {
    BlockPlanner planner = new BlockPlanner(catalogue, "test");
    assertThatThrownBy(() -> planner.plan(problem(), weeks, Limit.of(Effort.QUICK)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("(" + weeks + ")");
  }
}

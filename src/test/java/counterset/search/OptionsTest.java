package counterset.search;

import static counterset.search.Nearby.worth;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterset.catalogue.Catalogues;
import counterset.fixture.Problems;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.problem.ProblemReader;
import counterset.score.Constraint;
import counterset.score.Constraints;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Several plans of one problem that are not alike. */
class OptionsTest {

  private static final Limit QUICK = Limit.of(Effort.QUICK);
  private static final Catalogue SHIPPED = Catalogues.embedded();

  private static Problem shipped(String name) {
    Set<String> constraints =
        Constraints.OF_SESSIONS.stream().map(Constraint::id).collect(Collectors.toSet());
    return new ProblemReader(SHIPPED, constraints).read(Path.of("problems", name + ".json"));
  }

  private static List<Plan> options(Problem problem, int count) {
    return new Options(SHIPPED, "test").plans(problem, count, QUICK);
  }

  /** Exercises by their names without "with a band" and the like. */
  private static Set<String> exercises(Plan plan) {
    return plan.session().work().map(Exercise::root).collect(Collectors.toSet());
  }

  private static void assertApart(List<Plan> plans) {
    for (Plan one : plans) {
      for (Plan other : plans) {
        if (one != other) {
          Set<String> own = new HashSet<>(exercises(one));
          int all = own.size();
          own.removeAll(exercises(other));
          assertThat(own.size() * 2).isGreaterThanOrEqualTo(all);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"lunch-break-legs", "harbour-lane-tuesday-class", "three-in-a-row", "twice-round"})
  void eachTwoDifferInHalfAndTheBestIsFirst(String name) {
    List<Plan> plans = options(shipped(name), 3);
    assertThat(plans).hasSize(3).allMatch(plan -> plan.score().feasible());
    assertApart(plans);
    for (int i = 1; i < plans.size(); i++) {
      assertThat(worth(plans.get(i))).isLessThanOrEqualTo(worth(plans.get(i - 1)));
    }
    Plan single = new SessionPlanner(SHIPPED, "test").plan(shipped(name), QUICK);
    assertThat(plans).as("the plan without options is one of them").contains(single);
  }

  @Test
  void manyOptions() {
    List<Plan> plans = options(shipped("lunch-break-legs"), 9);
    assertThat(plans).hasSizeGreaterThan(3);
    assertApart(plans);
  }

  /** With the exercises of two sessions there is no third that is far enough from both. */
  @Test
  void fewerWhereTheExercisesDoNotSuffice() {
    Problem problem = Nearby.problem(1, 1);
    List<Plan> plans = new Options(Nearby.CATALOGUE, "test").plans(problem, 9, QUICK);
    assertThat(plans).isNotEmpty().hasSizeLessThan(9);
    assertApart(plans);
  }

  @Test
  void oneWhereMoreThanHalfIsKept() {
    Problem plain = shipped("lunch-break-legs");
    Plan plan = new SessionPlanner(SHIPPED, "test").plan(plain, QUICK);
    List<Keep> keeps = new ArrayList<>();
    plan.session()
        .supersets()
        .subList(0, 6)
        .forEach(s -> keeps.add(new Keep(new At(s.number(), 0), s.exercises().get(0).id())));
    plan.session().supersets().subList(0, 6).stream()
        .filter(s -> !s.isUnilateral())
        .forEach(s -> keeps.add(new Keep(new At(s.number(), 1), s.exercises().get(1).id())));
    Problem kept = new Problems(plain).keeping(keeps.toArray(Keep[]::new)).problem();
    assertThat(options(kept, 3)).hasSize(1);
  }

  @Test
  void theSameBytesTwice() {
    Problem problem = shipped("lunch-break-legs");
    assertThat(options(problem, 3)).isEqualTo(options(problem, 3));
  }

  @Test
  void stoppedThereIsOneAtMost() {
    Options options = new Options(SHIPPED, "test");
    options.stop();
    assertThat(options.plans(shipped("lunch-break-legs"), 3, QUICK)).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 1, 10})
  void countsOutOfRangeAreRefused(int count) {
    Problem problem = Nearby.problem(1, 1);
    assertThatThrownBy(() -> options(problem, count)).hasMessageContaining("(" + count + ")");
  }
}

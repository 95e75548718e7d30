package counterset.search;

import static counterset.search.Nearby.worth;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterset.catalogue.Catalogues;
import counterset.fixture.GivenPlans;
import counterset.fixture.Problems;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.score.ExerciseFilter;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rest of a session around what was chosen. */
class ReflowTest {

  private static final Limit QUICK = Limit.of(Effort.QUICK);
  private static final Catalogue SHIPPED = Catalogues.embedded();

  static IntStream seeds() {
    return IntStream.range(0, 6);
  }

  private static Plan reflow(Catalogue catalogue, Plan swapped, At chosen) {
    return new Reflow(catalogue, "test").reflow(swapped, List.of(chosen), QUICK);
  }

  private static Exercise at(Plan plan, At at) {
    return plan.session().supersets().get(at.superset() - 1).exercises().get(at.position());
  }

  /** What the rule makes of a session, as one number. */
  private static long rank(Plan plan, int changes) {
    long rules = plan.score().hard() * 1_000_000_000_000L + plan.score().medium() * 1_000_000L;
    return rules + plan.score().soft() - (long) Reflow.LEAST_GAIN * changes;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noSessionWithFewerChangesIsBetterByTheRule(int seed) {
    Problem problem = Nearby.problem(2, seed);
    Plan good = new SessionPlanner(Nearby.CATALOGUE, "test").plan(problem, QUICK);
    List<Exercise> others = List.copyOf(Nearby.CATALOGUE.exercises().values());
    Plan swapped =
        GivenPlans.spoiled(good, Nearby.CATALOGUE, others.subList(seed % 5, 10), 1 + seed % 3);
    List<At> filled =
        swapped.session().supersets().stream()
            .filter(superset -> !superset.exercises().isEmpty())
            .map(superset -> new At(superset.number(), 0))
            .toList();
    At chosen = filled.get(seed % filled.size());
    Plan after = reflow(Nearby.CATALOGUE, swapped, chosen);

    assertThat(at(after, chosen)).isEqualTo(at(swapped, chosen));
    int changes = Improver.changed(swapped, after).size();
    long best =
        Nearby.all(swapped, 2, List.of(chosen)).stream()
            .mapToLong(plan -> rank(plan, Improver.changed(swapped, plan).size()))
            .max()
            .orElseThrow();
    long reached = rank(after, changes);
    assertThat(reached).as("seed %d, %d changes", seed, changes).isGreaterThanOrEqualTo(best);
    if (changes <= 2) {
      assertThat(reached).as("seed %d, %d changes", seed, changes).isEqualTo(best);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aChoiceStaysAndNoRuleIsBroken(int seed) {
    Problem problem =
        Problems.of(SHIPPED, Region.values()[seed % 3])
            .owning(Problems.two("dumbbell"), Problems.two("mat"))
            .seed(seed)
            .problem();
    Plan plan = new SessionPlanner(SHIPPED, "test").plan(problem, QUICK);
    List<Exercise> others =
        new ExerciseFilter(problem, SHIPPED)
            .main().stream().filter(exercise -> !exercise.isUnilateral()).toList();
    At chosen =
        plan.session().supersets().stream()
            .filter(superset -> !superset.isUnilateral())
            .map(superset -> new At(superset.number(), seed % 2))
            .skip(seed % 3)
            .findFirst()
            .orElseThrow();
    Plan swapped = GivenPlans.with(plan, SHIPPED, chosen, others.get(seed * 7 % others.size()));
    Plan after = reflow(SHIPPED, swapped, chosen);
    assertThat(at(after, chosen)).isEqualTo(at(swapped, chosen));
    assertThat(after.score().feasible()).isTrue();
    assertThat(worth(after)).isGreaterThanOrEqualTo(worth(swapped));
    assertThat(Improver.changed(swapped, after)).hasSizeLessThanOrEqualTo(8);
  }

  @Test
  void theSameBytesTwice() {
    Plan swapped = GivenPlans.random(Nearby.problem(2, 2), Nearby.CATALOGUE, 3, 2);
    At chosen = new At(2, 0);
    assertThat(reflow(Nearby.CATALOGUE, swapped, chosen))
        .isEqualTo(reflow(Nearby.CATALOGUE, swapped, chosen));
  }

  @Test
  void aPlaceThatHoldsNothingCannotBeChosen() {
    Plan empty = GivenPlans.of(Nearby.problem(2, 2), Nearby.CATALOGUE, List.of());
    assertThatThrownBy(() -> reflow(Nearby.CATALOGUE, empty, new At(2, 0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("(2A)");
    assertThatThrownBy(() -> reflow(Nearby.CATALOGUE, empty, new At(90, 2)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("(90C)");
  }
}

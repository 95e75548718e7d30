package counterset.search;

import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.search.Conflict.target;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands in the way, and what frees it, where both are known. */
class WaysOutTest {

  /** A conflict with its best plan and what was found for it. */
  record Explained(Conflict conflict, Plan plan, Goal goal, List<WayOut> ways) {

    static Explained of(Conflict conflict) {
      Plan plan = conflict.plan();
      List<WayOut> ways = new WaysOut(plan, conflict.catalogue()).find();
      return new Explained(conflict, plan, Goal.of(plan), ways);
    }

    @Override
    public String toString() {
      return conflict.name();
    }
  }

  private static final List<Explained> EXPLAINED =
      Conflicts.all().stream().map(Explained::of).toList();

  static List<Explained> explained() {
    return EXPLAINED;
  }

  @ParameterizedTest
  @MethodSource("explained")
  void theConflictIsNamed(Explained it) {
    assertThat(it.goal.shortfall(it.plan)).as("shortfall").isPositive();
    assertThat(Obstacles.of(it.plan, it.conflict.catalogue()))
        .singleElement()
        .asString()
        .startsWith(it.conflict.obstacle());
  }

  @ParameterizedTest
  @MethodSource("explained")
  void theWaysOutAreKnown(Explained it) {
    assertThat(it.ways)
        .extracting(WayOut::phrase)
        .containsExactlyInAnyOrderElementsOf(it.conflict.ways());
  }

  @ParameterizedTest
  @MethodSource("explained")
  void everyWayOutFreesIt(Explained it) {
    for (WayOut way : it.ways) {
      assertThat(way.whole()).as(way.phrase()).isTrue();
      assertThat(way.problem()).as(way.phrase()).isNotEqualTo(it.conflict.problem());
      Plan again = it.conflict.plan(way.problem().withSeed(7), Effort.QUICK);
      assertThat(it.goal.shortfall(again)).as(way.phrase()).isZero();
    }
  }

  @ParameterizedTest
  @MethodSource("explained")
  void noSmallerSetOfChangesFreesIt(Explained it) {
    Conflict conflict = it.conflict;
    for (WayOut way : it.ways) {
      for (Change change : Changes.of(conflict.problem(), it.plan, conflict.catalogue())) {
        if (way.phrases().size() > 1 && way.phrases().contains(change.phrase())) {
          Plan alone = conflict.plan(change.applyTo(conflict.problem()), Effort.STANDARD);
          assertThat(it.goal.shortfall(alone)).as(change.phrase()).isPositive();
        }
      }
    }
  }

  /** Where no superset fits, where only a pair of changes helps, and where any of five does. */
  @ParameterizedTest
  @ValueSource(ints = {0, 5, 9})
  void theSameRequestGivesTheSameWays(int number) {
    Explained it = EXPLAINED.get(number);
    assertThat(new WaysOut(it.plan, it.conflict.catalogue()).find()).isEqualTo(it.ways);
  }

  @Test
  void whatHelpsOnlyInPartIsSaidToDoSo() {
    Conflict conflict =
        Conflict.of(
            "three targets that nothing trains",
            List.of(plain("one"), plain("two")),
            asked ->
                asked
                    .minutes(5)
                    .targets(
                        target("calves", 1),
                        target("shins", 1),
                        target("quadriceps", 1),
                        target("triceps", 1)),
            "");
    List<WayOut> ways = Explained.of(conflict).ways();
    assertThat(ways)
        .extracting(WayOut::phrase)
        .containsExactly("drop calves", "drop shins", "drop triceps");
    assertThat(ways).noneMatch(WayOut::whole);
  }

  @Test
  void aStoppedSearchFindsNothingMore() {
    Explained kept = EXPLAINED.get(1);
    WaysOut search = new WaysOut(kept.plan, kept.conflict.catalogue());
    search.stop();
    assertThat(search.find()).isEmpty();
  }
}

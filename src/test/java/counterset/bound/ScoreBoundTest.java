package counterset.bound;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.RandomSessions;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.score.ExerciseFilter;
import counterset.score.SessionFacts;
import counterset.search.Effort;
import counterset.search.Limit;
import counterset.search.SessionPlanner;
import counterset.timeline.SessionLength;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** The limit holds for every session of many random problems; exhaustive search says so. */
class ScoreBoundTest {

  private static final int TINY = 300;
  private static final int LARGE = 8;
  private static final int FAR_BELOW = 50;

  private final Catalogue catalogue = Catalogues.embedded();

  @Test
  void noSessionOfATinyProblemIsAboveTheLimit() {
    int solved = 0;
    int exact = 0;
    for (long seed = 1; seed <= TINY; seed++) {
      TinyProblem tiny = TinyProblem.of(catalogue, seed);
      ScoreBound bound = new ScoreBound(tiny.facts());
      int best = Integer.MIN_VALUE;
      int shown = 0;
      for (int medium : tiny.best().keySet().stream().sorted((a, b) -> b - a).toList()) {
        best = Math.max(best, tiny.best().get(medium));
        if (shown++ < 4) {
          OptionalInt limit = bound.upperLimit(medium, best - FAR_BELOW);
          String what = "seed " + seed + ", medium " + medium + ", weights ";
          Map<String, Integer> weights = tiny.facts().problem().weights();
          if (limit.isPresent()) {
            assertThat(limit.getAsInt()).as(what + weights).isGreaterThanOrEqualTo(best);
            OptionalInt tight = bound.upperLimit(medium, best - 1);
            assertThat(tight.getAsInt()).as("tight " + what + weights).isGreaterThanOrEqualTo(best);
            solved++;
            exact += limit.getAsInt() == best ? 1 : 0;
          }
        }
      }
    }
    assertThat(solved).as("limits held against an optimum").isGreaterThan(TINY);
    assertThat(exact).as("limits that are the optimum").isGreaterThan(TINY / 10);
  }

  /** What stands before work on the floor is not charged for being lighter. */
  @Test
  void theLimitKnowsThatTheFloorComesLast() {
    int solved = 0;
    for (long seed = 1; seed <= TINY; seed++) {
      TinyProblem tiny = TinyProblem.floorLast(catalogue, seed);
      int medium = tiny.best().keySet().stream().max(Integer::compare).orElse(0);
      if (tiny.best().containsKey(medium)) {
        int best = tiny.best().get(medium);
        OptionalInt limit = new ScoreBound(tiny.facts()).upperLimit(medium, best - FAR_BELOW);
        if (limit.isPresent()) {
          assertThat(limit.getAsInt()).as("seed %d", seed).isGreaterThanOrEqualTo(best);
          solved++;
        }
      }
    }
    assertThat(solved).as("limits held against an optimum").isGreaterThan(TINY / 4);
  }

  /** Medium 0 means that each wish must be met: then paths have most to remember. */
  @Test
  void noSessionThatMeetsSeveralWishesIsAboveTheLimit() {
    int solved = 0;
    for (long seed = 1; seed <= TINY; seed++) {
      TinyProblem tiny = TinyProblem.wishing(catalogue, seed);
      Integer best = tiny.best().get(0);
      for (int below : new int[] {1, 5, FAR_BELOW}) {
        OptionalInt limit =
            best == null
                ? OptionalInt.empty()
                : new ScoreBound(tiny.facts()).upperLimit(0, best - below);
        if (limit.isPresent()) {
          String what = "seed " + seed + ", plan " + below + " below the best";
          assertThat(limit.getAsInt()).as(what).isGreaterThanOrEqualTo(best);
          solved++;
        }
      }
    }
    assertThat(solved).as("limits held against an optimum").isGreaterThan(TINY / 4);
  }

  @Test
  void noPlanIsAboveTheLimit() {
    int feasible = 0;
    for (long seed = 1; seed <= LARGE; seed++) {
      Problem problem = new RandomSessions(catalogue, seed).problem().keeping().problem();
      Plan plan = new SessionPlanner(catalogue, "test").plan(problem, Limit.of(Effort.QUICK));
      if (plan.score().hard() == 0) {
        feasible++;
        int soft = plan.score().soft();
        int limit =
            new ScoreBound(facts(problem))
                .upperLimit(plan.score().medium(), soft - FAR_BELOW, 80)
                .getAsInt();
        assertThat(limit).as("seed %d", seed).isGreaterThanOrEqualTo(soft);
      }
    }
    assertThat(feasible).isGreaterThan(LARGE / 3);
  }

  @Test
  void moreStepsNeverRaiseTheLimitAndTheSameStepsGiveTheSame() {
    SessionFacts facts = facts(new RandomSessions(catalogue, 5).problem().keeping().problem());
    ScoreBound bound = new ScoreBound(facts);
    int before = Integer.MAX_VALUE;
    for (int steps : new int[] {1, 2, 5, 10, 40, 50, 70}) {
      int limit = bound.upperLimit(0, -100, steps).getAsInt();
      assertThat(limit).isLessThanOrEqualTo(before);
      assertThat(new ScoreBound(facts).upperLimit(0, -100, steps)).hasValue(limit);
      before = limit;
    }
  }

  private SessionFacts facts(Problem problem) {
    return new SessionFacts(
        problem,
        catalogue,
        new ExerciseFilter(problem, catalogue).main(),
        SessionLength.supersetsThatFit(problem.clock(), problem.minutes()));
  }
}

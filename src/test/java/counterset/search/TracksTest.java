package counterset.search;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.Problems;
import counterset.fixture.RandomSessions;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.IntervalKind;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Session;
import counterset.model.Superset;
import counterset.model.Track;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Classes, planned with the real catalogue. */
class TracksTest {

  private static final int PROBLEMS = 24;

  private final Catalogue catalogue = Catalogues.embedded();
  private final SessionPlanner planner = new SessionPlanner(catalogue, "test");

  private Problems wholeBody() {
    return Problems.of(catalogue, Region.values())
        .owning(Problems.two("dumbbell"), Problems.two("chair"))
        .tracks(Set.of("sore-knees"), Set.of("no-floor"), Set.of("sore-shoulders", "no-jumping"));
  }

  private boolean suits(Set<String> limitations, Exercise exercise) {
    return limitations.stream().allMatch(id -> catalogue.limitations().get(id).allows(exercise));
  }

  @Test
  void aClassOfThreeTracksGetsAWholeSession() {
    Plan plan = planner.plan(wholeBody().problem(), Limit.of(Effort.STANDARD));
    assertThat(plan.matches())
        .filteredOn(match -> !match.constraint().equals("equipmentUnused"))
        .filteredOn(match -> Set.of("hard", "medium").contains(level(plan, match.constraint())))
        .isEmpty();
    assertThat(plan.score().hard()).isZero();
    assertThat(plan.score().medium()).isZero();
    assertThat(plan.tracks()).hasSize(3);
    for (Track track : plan.tracks()) {
      assertThat(track.plan().score().hard()).as(track.name()).isZero();
      assertThat(work(track.plan())).hasSameSizeAs(work(plan));
      assertThat(track.plan().session().warmUp())
          .extracting(Exercise::seconds)
          .isEqualTo(plan.session().warmUp().stream().map(Exercise::seconds).toList());
    }
    assertSafe(plan);
  }

  private static String level(Plan plan, String constraint) {
    return plan.score().lines().stream()
        .filter(line -> line.id().equals(constraint))
        .findFirst()
        .orElseThrow()
        .level();
  }

  private static List<Integer> work(Plan plan) {
    return plan.timeline().stream()
        .filter(interval -> interval.kind() == IntervalKind.WORK)
        .map(interval -> interval.end() - interval.start())
        .toList();
  }

  @Test
  void aScoredSessionIsWorthWhatItWasWhenItWasPlanned() {
    Problem problem = wholeBody().problem();
    Plan plan = planner.plan(problem, Limit.of(Effort.QUICK));
    Plan again = planner.score(problem, plan.session(), plan.solver());
    assertThat(again.score()).isEqualTo(plan.score());
    assertThat(again.session()).isEqualTo(plan.session());
    assertThat(again.tracks()).isEqualTo(plan.tracks());
  }

  @Test
  void aSessionWithoutItsModificationsBreaksARulePerTrack() {
    Problem problem = wholeBody().problem();
    Plan plan = planner.plan(problem, Limit.of(Effort.QUICK));
    Session bare =
        new Session(plan.session().warmUp(), plan.session().supersets(), plan.session().coolDown());
    Plan scored = planner.score(problem, bare, plan.solver());
    long missing = plan.session().modifications().stream().mapToLong(Map::size).sum();
    assertThat(missing).isPositive();
    assertThat(scored.matches())
        .filteredOn(match -> match.constraint().equals("modificationMissing"))
        .hasSize((int) missing)
        .allSatisfy(match -> assertThat(match.track()).isPresent());
  }

  @Test
  void nothingUnsuitableIsEverDoneWhereTheScoreIsFeasible() {
    int feasible = 0;
    for (long seed = 1; seed <= PROBLEMS; seed++) {
      RandomSessions random = new RandomSessions(catalogue, seed);
      Problem problem =
          random.withTracks(random.problem().including().keeping().excluding()).problem();
      Plan plan = planner.plan(problem, Limit.of(Effort.QUICK));
      if (plan.score().hard() == 0) {
        feasible++;
        assertSafe(plan);
      }
    }
    assertThat(feasible).isGreaterThan(PROBLEMS / 3);
  }

  private void assertSafe(Plan plan) {
    assertSafe(plan, plan.problem().limitations());
    for (int i = 0; i < plan.tracks().size(); i++) {
      Track track = plan.tracks().get(i);
      Set<String> limitations = new HashSet<>(plan.problem().limitations());
      limitations.addAll(track.limitations());
      assertSafe(track.plan(), limitations);
      assertModified(plan, i);
    }
  }

  private void assertSafe(Plan plan, Set<String> limitations) {
    List<Exercise> all = new ArrayList<>(plan.session().work().toList());
    Set<String> roots = new HashSet<>();
    plan.session().work().forEach(e -> assertThat(roots.add(e.root())).as("%s", e.id()).isTrue());
    all.addAll(plan.session().warmUp());
    all.addAll(plan.session().coolDown());
    assertThat(all)
        .as("%s, seed %d", limitations, plan.problem().seed())
        .allMatch(exercise -> suits(limitations, exercise));
  }

  private void assertModified(Plan plan, int track) {
    Map<At, Exercise> modifications = plan.session().modifications().get(track);
    Set<At> needed = new HashSet<>();
    for (Superset superset : plan.session().supersets()) {
      for (Exercise exercise : superset.distinct()) {
        if (!suits(plan.problem().tracks().get(track), exercise)) {
          needed.add(new At(superset.number(), superset.exercises().indexOf(exercise)));
        }
      }
    }
    assertThat(modifications.keySet()).isEqualTo(needed);
    assertThat(plan.tracks().get(track).modifications()).isEqualTo(modifications);
  }
}

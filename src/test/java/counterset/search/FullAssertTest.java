package counterset.search;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.phase.PhaseConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import counterset.catalogue.Catalogues;
import counterset.fixture.FilledWeek;
import counterset.fixture.Problems;
import counterset.fixture.RandomWeeks;
import counterset.fixture.SessionBuilder;
import counterset.fixture.SmallTrade;
import counterset.fixture.Trade;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Pairing;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Superset;
import counterset.model.Target;
import counterset.score.Candidate;
import counterset.score.Lineup;
import counterset.score.SessionFacts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Searches in which the solver checks after every move, every move taken back and every step that
 * the score is that of a fresh look at the whole draft.
 */
class FullAssertTest {

  private static final int MOVES = 3_000;
  private static final int SUPERSETS = 8;

  private static Draft solve(SessionFacts facts) {
    return solve(Task.of(Task.Day.empty(Casting.of(Lineup.empty(facts)))), 1);
  }

  private static Draft solve(Task task, long seed) {
    Limit limit = new Limit(Effort.QUICK, OptionalInt.empty());
    SolverConfig config =
        SearchConfig.of(seed, (int) seed, limit, SUPERSETS, EnvironmentMode.FULL_ASSERT);
    // All phases in few moves: the first one alone would hardly leave the empty session.
    for (PhaseConfig<?> phase : config.getPhaseConfigList()) {
      TerminationConfig end = phase.getTerminationConfig();
      end.setMoveCountLimit(end.getMoveCountLimit() * MOVES / Effort.QUICK.moves(SUPERSETS));
    }
    return SolverFactory.<Draft>create(config).buildSolver().solve(Draft.of(task));
  }

  private static Lineup lineup(Draft draft) {
    return draft.lineups().get(0);
  }

  /** Solves with a part of the small trade; as many exercises as asked, of all sorts. */
  private static Draft solve(int exercises, int supersets, UnaryOperator<Problems> asked) {
    List<Exercise> all = SmallTrade.exercises(exercises);
    Catalogue catalogue = Trade.of(all);
    Problems plain =
        Problems.of(catalogue, Region.LOWER)
            .targets(
                new Target("quadriceps", 2, 2),
                new Target("hamstrings", 1, 1),
                new Target("chest", 1, 1))
            .owning(
                Problems.two(Trade.DUMBBELL),
                Problems.two(Trade.ANKLE_WEIGHTS),
                Problems.two(Trade.MAT));
    Problem problem = asked.apply(plain).problem();
    return solve(new SessionFacts(problem, catalogue, all, supersets));
  }

  private static void assertWhole(Draft draft) {
    assertThat(draft.getScore().hardScore()).isLessThanOrEqualTo(0);
    for (Superset superset : lineup(draft).supersets()) {
      if (superset.exercises().stream().anyMatch(Exercise::isUnilateral)) {
        assertThat(superset.isUnilateral()).as("superset %s", superset).isTrue();
      }
    }
  }

  @Test
  void pairsAndOneSidedSupersets() {
    Draft draft = solve(40, 5, p -> p.limited("sore-knees"));
    assertWhole(draft);
    assertThat(lineup(draft).places()).doesNotContainNull();
  }

  @Test
  void keptPlacesStayWhereTheyAre() {
    Keep[] keep = {new Keep(new At(1, 1), "e0"), new Keep(new At(3, 0), "e5")};
    Draft draft = solve(20, 4, p -> p.keeping(keep).including("e0"));
    Candidate[] places = lineup(draft).places();
    assertThat(places[1].exercise().id()).isEqualTo("e0");
    assertThat(places[4].exercise().id()).isEqualTo("e5");
    assertThat(places[5].exercise().id()).as("the other side").isEqualTo("e5");
    assertThat(draft.getSpots())
        .filteredOn(Spot::isPinned)
        .extracting(Spot::getIndex)
        .containsExactly(1, 4, 5);
    assertWhole(draft);
  }

  @Test
  void nearlyEverythingIsKept() {
    Keep[] keep = {new Keep(new At(1, 0), "e0"), new Keep(new At(2, 0), "e1")};
    Draft draft = solve(8, 2, p -> p.keeping(keep));
    assertWhole(draft);

    Spot open = draft.getSpots().get(1);
    for (Candidate candidate : open.getCandidates()) {
      open.setCandidate(candidate);
      DraftScore score = new DraftScore();
      score.resetWorkingSolution(draft);
      assertThat(score.calculateScore())
          .as("with %s in the one open place", candidate)
          .isLessThanOrEqualTo(draft.getScore());
    }
  }

  @Test
  void triSets() {
    Draft draft =
        solve(
            24,
            3,
            p ->
                p.clock(SessionBuilder.clock(3, 1))
                    .pairing(Pairing.COMPOUND)
                    .weighing(Map.of("tooEasy", 0)));
    assertThat(lineup(draft).places())
        .noneMatch(candidate -> candidate != null && candidate.unilateral());
  }

  @Test
  void rounds() {
    assertWhole(
        solve(
            16,
            2,
            p ->
                p.clock(SessionBuilder.clock(2, 3))
                    .pairing(Pairing.FREE)
                    .liking("e2")
                    .disliking("e3")));
  }

  @Test
  void straightSets() {
    Draft draft =
        solve(16, 5, p -> p.clock(SessionBuilder.clock(1, 2)).weighing(Map.of("floorTrip", 3)));
    assertThat(lineup(draft).places())
        .noneMatch(candidate -> candidate != null && candidate.unilateral());
  }

  @Test
  void tracks() {
    Draft draft =
        solve(20, 4, p -> p.tracks(Set.of("sore-knees"), Set.of("no-floor", "sore-knees")));
    assertWhole(draft);
    assertThat(lineup(draft).standIns()).anyMatch(standIn -> standIn != null);
  }

  @Test
  void tracksOfTriSetsAndRounds() {
    assertWhole(
        solve(
            20, 2, p -> p.clock(SessionBuilder.clock(3, 2)).tracks(Set.of("sore-knees")).level(3)));
  }

  @Test
  void tracksWhereNearlyEverythingIsKept() {
    Keep[] keep = {new Keep(new At(1, 1), "e3"), new Keep(new At(2, 0), "e5")};
    Draft draft =
        solve(20, 2, p -> p.keeping(keep).tracks(Set.of("sore-knees"), Set.of("no-floor")));
    assertThat(lineup(draft).places()[1].exercise().id()).isEqualTo("e3");
  }

  @Test
  void tooFewExercisesForAllSupersetsRepeatNone() {
    Draft draft = solve(3, 4, UnaryOperator.identity());
    assertThat(draft.getScore().hardScore()).isZero();
    assertThat(draft.getScore().mediumScore()).isNegative();
  }

  @Test
  void insideAFence() {
    Draft given = solve(20, 4, p -> p.tracks(Set.of("sore-knees")));
    Lineup home = lineup(given);
    Lineup near = home.copy();
    near.places()[0] = home.facts().candidates().get(0);
    near.places()[1] = null;
    Task.Day day = new Task.Day(near, new boolean[near.places().length]);
    Fence fence = new FewChanges(home.places(), 2, 3);
    Draft found = solve(new Task(List.of(day), Optional.empty(), Optional.of(fence)), 1);
    assertThat(FewChanges.count(home.places(), lineup(found).places(), 2)).isLessThanOrEqualTo(3);
    assertThat(found.getScore()).as("as good as home").isGreaterThanOrEqualTo(given.getScore());
  }

  @Test
  void weeks() {
    for (long seed = 1; seed <= 2; seed++) {
      FilledWeek week = new RandomWeeks(Catalogues.embedded(), seed).filled();
      List<Task.Day> days = new ArrayList<>();
      for (Lineup session : week.sessions()) {
        days.add(new Task.Day(session, new boolean[session.places().length]));
      }
      Draft from = Draft.of(new Task(days, Optional.of(week.facts()), Optional.empty()));
      DraftScore before = new DraftScore();
      before.resetWorkingSolution(from);
      assertThat(solve(from.getTask(), seed).getScore()).isGreaterThan(before.calculateScore());
    }
  }

  @Test
  void oneExerciseOnly() {
    assertThat(solve(1, 2, UnaryOperator.identity()).getScore()).isNotNull();
  }
}

package counterset.search;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import counterset.fixture.Problems;
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
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import counterset.planning.constraints.SessionConstraintProvider;
import counterset.planning.scoring.SearchScoreCalculator;
import counterset.score.Candidate;
import counterset.score.SessionFacts;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Searches in which the solver checks after every move that nothing is corrupt and that the
 * straight pass, which drives the search, says the same as the constraint streams.
 */
class FullAssertTest {

  private static final int WALKS = 6;

  private static SessionSolution solve(SessionFacts facts, Problem problem) {
    return climb(SessionSolutions.empty(facts, Scoring.weights(problem)));
  }

  private static SessionSolution climb(SessionSolution from) {
    SolverConfig config =
        SearchConfig.of(from.getFacts().problem().seed(), EnvironmentMode.FULL_ASSERT)
            .withTerminationConfig(SearchConfig.walks(WALKS));
    config
        .getScoreDirectorFactoryConfig()
        .withAssertionScoreDirectorFactory(
            new ScoreDirectorFactoryConfig()
                .withConstraintProviderClass(SessionConstraintProvider.class));
    return SolverFactory.<SessionSolution>create(config).buildSolver().solve(from);
  }

  /** Solves with a part of the small trade; as many exercises as asked, of all sorts. */
  private static SessionSolution solve(
      int exercises, int supersets, UnaryOperator<Problems> asked) {
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
    return solve(new SessionFacts(problem, catalogue, all, supersets), problem);
  }

  private static void assertWhole(SessionSolution solution) {
    assertThat(solution.getScore().hardScore()).isLessThanOrEqualTo(0);
    for (Superset superset : SessionSolutions.supersets(solution)) {
      if (superset.exercises().stream().anyMatch(Exercise::isUnilateral)) {
        assertThat(superset.isUnilateral()).as("superset %s", superset).isTrue();
      }
    }
  }

  @Test
  void pairsAndOneSidedSupersets() {
    SessionSolution solution = solve(20, 5, p -> p.limited("sore-knees"));
    assertWhole(solution);
    assertThat(solution.getPlaces()).allMatch(place -> place.getCandidate() != null);
  }

  @Test
  void keptPlacesStayWhereTheyAre() {
    Keep[] keep = {new Keep(new At(1, 1), "e0"), new Keep(new At(3, 0), "e5")};
    SessionSolution solution = solve(20, 4, p -> p.keeping(keep).including("e0"));
    List<Place> places = solution.getPlaces();
    assertThat(places.get(1).getCandidate().exercise().id()).isEqualTo("e0");
    assertThat(places.get(4).getCandidate().exercise().id()).isEqualTo("e5");
    assertThat(places.get(5).getCandidate().exercise().id()).as("the other side").isEqualTo("e5");
    assertThat(places)
        .filteredOn(Place::isPinned)
        .extracting(Place::getIndex)
        .containsExactly(1, 4, 5);
    assertWhole(solution);
  }

  @Test
  void nearlyEverythingIsKept() {
    Keep[] keep = {new Keep(new At(1, 0), "e0"), new Keep(new At(2, 0), "e1")};
    SessionSolution solution = solve(8, 2, p -> p.keeping(keep));
    assertWhole(solution);

    HardMediumSoftScore found = solution.getScore();
    Place open = solution.getPlaces().get(1);
    for (Candidate candidate : solution.getFacts().candidates()) {
      open.setCandidate(candidate);
      assertThat(new SearchScoreCalculator().calculateScore(solution))
          .as("with %s in the one open place", candidate)
          .isLessThanOrEqualTo(found);
    }
  }

  @Test
  void triSets() {
    SessionSolution solution =
        solve(
            24,
            3,
            p ->
                p.clock(SessionBuilder.clock(3, 1))
                    .pairing(Pairing.COMPOUND)
                    .weighing(Map.of("tooEasy", 0)));
    assertThat(solution.getPlaces())
        .allSatisfy(place -> assertThat(place.getCandidate().unilateral()).isFalse());
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
    SessionSolution solution =
        solve(16, 5, p -> p.clock(SessionBuilder.clock(1, 2)).weighing(Map.of("floorTrip", 3)));
    assertThat(solution.getPlaces())
        .allSatisfy(place -> assertThat(place.getCandidate().unilateral()).isFalse());
  }

  @Test
  void tracks() {
    SessionSolution solution =
        solve(20, 4, p -> p.tracks(Set.of("sore-knees"), Set.of("no-floor", "sore-knees")));
    assertWhole(solution);
    assertThat(solution.getStandIns()).anyMatch(standIn -> standIn.getCandidate() != null);
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
    SessionSolution solution =
        solve(20, 2, p -> p.keeping(keep).tracks(Set.of("sore-knees"), Set.of("no-floor")));
    assertThat(solution.getPlaces().get(1).getCandidate().exercise().id()).isEqualTo("e3");
  }

  @Test
  void tooFewExercisesForAllSupersetsRepeatNone() {
    SessionSolution solution = solve(3, 4, UnaryOperator.identity());
    assertThat(solution.getScore().hardScore()).isZero();
    assertThat(solution.getScore().mediumScore()).isNegative();
  }

  @Test
  void insideAFence() {
    SessionSolution given = solve(20, 4, p -> p.tracks(Set.of("sore-knees")));
    Candidate[] home =
        given.getPlaces().stream().map(Place::getCandidate).toArray(Candidate[]::new);
    HardMediumSoftScore atHome = given.getScore();
    given.getPlaces().get(0).setCandidate(given.getFacts().candidates().get(0));
    given.getPlaces().get(1).setCandidate(null);
    given.setFence(new FewChanges(home, 2, 3));
    SessionSolution found = climb(given);
    Candidate[] places =
        found.getPlaces().stream().map(Place::getCandidate).toArray(Candidate[]::new);
    assertThat(FewChanges.count(home, places, 2)).isLessThanOrEqualTo(3);
    assertThat(found.getScore()).as("as good as home").isGreaterThanOrEqualTo(atHome);
  }

  @Test
  void oneExerciseOnly() {
    assertThat(solve(1, 2, UnaryOperator.identity()).getScore()).isNotNull();
  }
}

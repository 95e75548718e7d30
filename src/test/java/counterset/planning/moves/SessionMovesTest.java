package counterset.planning.moves;

import static counterset.fixture.ExerciseBuilder.exercise;
import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.impl.score.director.InnerScoreDirector;
import ai.timefold.solver.core.impl.solver.DefaultSolverFactory;
import counterset.fixture.Problems;
import counterset.fixture.SessionBuilder;
import counterset.fixture.Trade;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Keep;
import counterset.model.Position;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Sides;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import counterset.planning.StandIn;
import counterset.score.Candidate;
import counterset.score.Change;
import counterset.score.SessionFacts;
import counterset.score.Turns;
import counterset.search.SearchConfig;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Random moves, one after the other, leave what they must not touch as it is. */
class SessionMovesTest {

  private static final int MOVES = 200;

  @Property(tries = 200)
  void movesNeverTouchPinnedPlaces(
      @ForAll @IntRange(min = 1, max = 3) int perSuperset,
      @ForAll @IntRange(min = 1, max = 6) int supersets,
      @ForAll long seed) {
    SessionSolution solution = solution(perSuperset, supersets, seed, true);
    List<Candidate> before = candidates(solution);
    moved(
        solution,
        seed,
        move ->
            assertThat(move.places())
                .as("move %s, seed %d", move, seed)
                .noneMatch(Place::isPinned));
    for (Place place : solution.getPlaces()) {
      if (place.isPinned()) {
        assertThat(place.getCandidate()).isSameAs(before.get(place.getIndex()));
      }
    }
  }

  @Property(tries = 200)
  void movesKeepOneSidedExercisesOnBothSides(
      @ForAll @IntRange(min = 1, max = 3) int perSuperset,
      @ForAll @IntRange(min = 1, max = 6) int supersets,
      @ForAll long seed) {
    SessionSolution solution = solution(perSuperset, supersets, seed, false);
    moved(solution, seed, move -> assertWhole(solution, "after " + move + ", seed " + seed));
  }

  /** Whatever is moved, each track has what it needs and nothing else, and nothing twice. */
  @Property(tries = 200)
  void movesKeepStandInsConsistent(
      @ForAll @IntRange(min = 1, max = 3) int perSuperset,
      @ForAll @IntRange(min = 1, max = 6) int supersets,
      @ForAll boolean pinned,
      @ForAll long seed) {
    SessionSolution solution =
        solution(
            perSuperset,
            supersets,
            seed,
            pinned,
            problems -> problems.tracks(Set.of("sore-knees"), Set.of("no-floor")));
    assertCast(solution, "at first, seed " + seed);
    moved(solution, seed, move -> assertCast(solution, "after " + move + ", seed " + seed));
  }

  private static void assertCast(SessionSolution solution, String when) {
    List<Place> places = solution.getPlaces();
    int perSuperset = solution.getFacts().perSuperset();
    Candidate[] mains = candidates(solution).toArray(Candidate[]::new);
    Candidate[] standIns =
        solution.getStandIns().stream().map(StandIn::getCandidate).toArray(Candidate[]::new);
    Candidate[] effective = new Candidate[mains.length];
    for (int track = 0; track < solution.getFacts().tracks(); track++) {
      Turns.effective(mains, standIns, track, perSuperset, effective);
      Set<Integer> modified = new HashSet<>();
      Set<Integer> plain = new HashSet<>();
      for (Place place : places) {
        Candidate standIn = standIns[track * places.size() + place.getIndex()];
        Candidate main = place.getCandidate();
        int first = place.getIndex() - place.getPosition();
        boolean needed =
            main != null
                && main.isUnsuited(track)
                && Turns.firstSide(mains, first, place.getIndex()) == place.getIndex();
        if (!needed) {
          assertThat(standIn).as("not needed at %s %s", place, when).isNull();
          if (main != null && !main.isUnsuited(track)) {
            plain.add(main.root());
          }
        } else if (standIn != null) {
          assertThat(standIn.standsInFor(main, track)).as("valid at %s %s", place, when).isTrue();
          assertThat(modified.add(standIn.root())).as("repeated at %s %s", place, when).isTrue();
        }
      }
      assertThat(modified).as("track " + track + " " + when).noneMatch(plain::contains);
    }
  }

  private static void assertWhole(SessionSolution solution, String when) {
    int perSuperset = solution.getFacts().perSuperset();
    for (Place place : solution.getPlaces()) {
      if (place.getCandidate() != null && place.getCandidate().unilateral()) {
        assertThat(perSuperset).as(when).isEqualTo(2);
        Place other = solution.getPlaces().get(place.getIndex() ^ 1);
        assertThat(other.getCandidate()).as(when).isSameAs(place.getCandidate());
      }
    }
  }

  @Property(tries = 200)
  void movesEmptyNoPlace(
      @ForAll @IntRange(min = 1, max = 3) int perSuperset,
      @ForAll @IntRange(min = 1, max = 6) int supersets,
      @ForAll long seed) {
    SessionSolution solution = solution(perSuperset, supersets, seed, true);
    List<Boolean> filled = new ArrayList<>(filled(solution));
    moved(
        solution,
        seed,
        move -> {
          // A run of supersets may change places with a run that is not yet filled; there are never
          // more holes.
          long before = filled.stream().filter(full -> full).count();
          List<Boolean> now = filled(solution);
          assertThat(now.stream().filter(full -> full).count())
              .as("after %s", move)
              .isGreaterThanOrEqualTo(before);
          filled.clear();
          filled.addAll(now);
        });
  }

  private static List<Boolean> filled(SessionSolution solution) {
    return solution.getPlaces().stream().map(place -> place.getCandidate() != null).toList();
  }

  private static List<Candidate> candidates(SessionSolution solution) {
    List<Candidate> candidates = new ArrayList<>();
    solution.getPlaces().forEach(place -> candidates.add(place.getCandidate()));
    return candidates;
  }

  private interface Watcher {
    void after(FillMove move);
  }

  /** Makes moves on the solution itself. */
  private static void moved(SessionSolution solution, long seed, Watcher watcher) {
    var factory =
        (DefaultSolverFactory<SessionSolution>)
            SolverFactory.<SessionSolution>create(SearchConfig.of(1, EnvironmentMode.NO_ASSERT));
    try (InnerScoreDirector<SessionSolution, HardMediumSoftScore> director =
        factory.<HardMediumSoftScore>getScoreDirectorFactory().buildScoreDirector()) {
      director.setWorkingSolution(solution);
      SessionFacts facts = solution.getFacts();
      Dice dice = new Dice(seed);
      Lineup lineup = new Lineup(solution);
      Proposals proposals = new Proposals(lineup, Pool.of(facts), dice);
      Change change = new Change(lineup.size());
      Followers followers = new Followers(facts);
      followers.start(solution, lineup);
      for (int i = 0; i < MOVES; i++) {
        if (proposals.next(change)) {
          followers.leave(lineup);
          lineup.make(change);
          followers.tryCast(lineup);
          followers.accept();
        } else if (facts.tracks() > 0 && followers.tryAnother(lineup, dice)) {
          followers.accept();
        }
        FillMove move = FillMove.to(solution, lineup.candidates(), followers.standIns());
        move.doMoveOnly(director);
        watcher.after(move);
      }
    }
  }

  private static SessionSolution solution(
      int perSuperset, int supersets, long seed, boolean pinned) {
    return solution(perSuperset, supersets, seed, pinned, UnaryOperator.identity());
  }

  private static SessionSolution solution(
      int perSuperset, int supersets, long seed, boolean pinned, UnaryOperator<Problems> asked) {
    List<Exercise> exercises =
        IntStream.range(0, 12)
            .mapToObj(
                i ->
                    exercise("e" + i)
                        .withSides(i % 3 == 2 ? Sides.UNILATERAL : Sides.BILATERAL)
                        .withNeed(i % 2 == 0 ? Trade.DUMBBELL : Trade.WALL, 1)
                        .withDemand(Joint.KNEE, i % 4)
                        .withPosition(i % 5 == 4 ? Position.PRONE : Position.STANDING)
                        .build())
            .toList();
    Catalogue catalogue = Trade.of(exercises);
    Random random = new Random(seed);
    int kept = pinned ? random.nextInt(supersets) : 0;
    Keep[] keep =
        IntStream.range(0, kept)
            .mapToObj(
                i -> new Keep(new At(1 + i, random.nextInt(perSuperset)), "e" + random.nextInt(12)))
            .toArray(Keep[]::new);
    Problem problem =
        asked
            .apply(Problems.of(catalogue, Region.LOWER).owning(Problems.two(Trade.DUMBBELL)))
            .clock(SessionBuilder.clock(perSuperset, 1))
            .keeping(keep)
            .problem();
    return SessionSolutions.empty(
        new SessionFacts(problem, catalogue, exercises, supersets), Map.of());
  }
}

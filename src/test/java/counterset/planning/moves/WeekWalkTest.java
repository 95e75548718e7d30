package counterset.planning.moves;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import counterset.catalogue.Catalogues;
import counterset.fixture.Problems;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Keep;
import counterset.model.Part;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.EarlierSession;
import counterset.model.WeekSession;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import counterset.planning.WeekPlace;
import counterset.planning.WeekSolution;
import counterset.planning.WeekSolutions;
import counterset.planning.scoring.WeekScoreCalculator;
import counterset.score.SessionFacts;
import counterset.score.WeekFacts;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WeekWalkTest {

  private static final int TRIES = 4_000;
  private static final int SUPERSETS = 3;
  private static final int LEVEL = 20;

  private final Catalogue catalogue = Catalogues.embedded();

  private WeekSolution week(Problems... days) {
    List<WeekSession> sessions = new ArrayList<>();
    List<SessionSolution> empty = new ArrayList<>();
    for (Problems day : days) {
      Problem problem = day.problem();
      sessions.add(new WeekSession(DayOfWeek.of(1 + sessions.size()), problem));
      SessionFacts facts =
          new SessionFacts(problem, catalogue, catalogue.exercises(Part.MAIN), SUPERSETS);
      empty.add(SessionSolutions.empty(facts, Map.of()));
    }
    WeekProblem problem =
        new WeekProblem(
            "Test",
            sessions,
            List.of(
                new EarlierSession(
                    1, List.of(), Map.of("quadriceps", 3, "gluteus-maximus", 4, "chest", 3))),
            Map.of(),
            true,
            Map.of(),
            1);
    WeekFacts facts =
        new WeekFacts(problem, catalogue, empty.stream().map(SessionSolution::getFacts).toList());
    return WeekSolutions.join(facts, empty, Map.of());
  }

  private static WeekWalk walk(WeekSolution week, long seed) {
    WeekWalk walk = new WeekWalk(week, DayTools.of(week.getFacts()), new Dice(seed));
    walk.go(new Temperature(5, 1, TRIES), TRIES);
    return walk;
  }

  /** Fills the week as the walk had it at its best. */
  private static void fill(WeekSolution week, WeekWalk walk) {
    List<DayWalk> days = walk.days();
    week.getPlaces()
        .forEach(
            place -> place.setCandidate(days.get(place.getDay().index()).best()[place.getPlace()]));
    week.getStandIns()
        .forEach(
            standIn ->
                standIn.setCandidate(
                    days.get(standIn.getDay().index()).bestStandIns()[standIn.getStandIn()]));
  }

  @Test
  void whatTheWalkAddsUpIsTheScoreOfTheWeek() {
    Problems lower = Problems.of(catalogue, Region.LOWER).owning(Problems.two("dumbbell"));
    Problems all = Problems.of(catalogue, Region.values()).tracks(Set.of("sore-knees"));
    for (long seed = 1; seed <= 10; seed++) {
      WeekSolution week = week(lower, all, lower);
      WeekScoreCalculator calculator = new WeekScoreCalculator();
      HardMediumSoftScore before = calculator.calculateScore(week);
      WeekWalk walk = walk(week, seed);
      fill(week, walk);
      HardMediumSoftScore score = calculator.calculateScore(week);
      long energy =
          ((long) score.hardScore() << 2 * LEVEL)
              + ((long) score.mediumScore() << LEVEL)
              + score.softScore();
      assertThat(walk.bestEnergy()).as("seed %d", seed).isEqualTo(energy);
      assertThat(score).as("seed %d", seed).isGreaterThan(before);
    }
  }

  @Test
  void keptPlacesStay() {
    Problems lower = Problems.of(catalogue, Region.LOWER);
    String kept = catalogue.exercises(Part.MAIN).get(0).id();
    WeekSolution week = week(lower, lower.keeping(new Keep(new At(2, 0), kept)));
    fill(week, walk(week, 1));
    assertThat(week.getPlaces())
        .filteredOn(WeekPlace::isPinned)
        .isNotEmpty()
        .allMatch(place -> place.getDay().index() == 1)
        .allMatch(place -> place.getCandidate().exercise().id().equals(kept));
  }
}

package counterset.planning.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.analysis.ScoreAnalysis;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.api.solver.SolutionManager;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.solver.SolverConfig;
import counterset.catalogue.Catalogues;
import counterset.fixture.RandomWeeks;
import counterset.model.Catalogue;
import counterset.planning.WeekPlace;
import counterset.planning.WeekSolution;
import counterset.planning.WeekStandIn;
import counterset.planning.constraints.WeekConstraintProvider;
import counterset.score.Candidate;
import counterset.score.Change;
import counterset.score.WeekDay;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * What drives the search for a week says the same as the constraint streams that specify it, and as
 * the ledger that explains it.
 */
class WeekLedgerTest {

  private static final int WEEKS = 400;
  private static final int CHANGED_WEEKS = 100;
  private static final int CHANGES = 25;

  private final Catalogue catalogue = Catalogues.embedded();
  private final SolutionManager<WeekSolution, HardMediumSoftScore> streams =
      SolutionManager.create(
          SolverFactory.create(
              new SolverConfig()
                  .withSolutionClass(WeekSolution.class)
                  .withEntityClasses(WeekPlace.class, WeekStandIn.class)
                  .withConstraintProviderClass(WeekConstraintProvider.class)));

  @Test
  void equalsTheConstraintStreamsOnRandomWeeks() {
    Map<String, Integer> seen = new TreeMap<>();
    for (long seed = 1; seed <= WEEKS; seed++) {
      WeekSolution week = new RandomWeeks(catalogue, seed).solution();
      ScoreAnalysis<HardMediumSoftScore> analysis = streams.analyze(week);

      assertThat(byConstraint(week))
          .as("by constraint, seed %d", seed)
          .isEqualTo(byConstraint(analysis));
      assertThat(searchScore(week, places(week)))
          .as("score, seed %d", seed)
          .isEqualTo(analysis.score());
      byConstraint(analysis).forEach((id, sums) -> seen.merge(id, 1, Integer::sum));
    }
    assertThat(seen.keySet())
        .as("constraints that matched at all")
        .containsExactly("recoveryShort", "weekFrequency", "weekRepeated", "weeklyVolume");
    assertThat(seen.values()).allMatch(count -> count > WEEKS / 20);
  }

  @Test
  void changesOfOneSessionLeadWhereTheWholeWeekLeads() {
    for (long seed = 1; seed <= CHANGED_WEEKS; seed++) {
      WeekSolution week = new RandomWeeks(catalogue, seed).solution();
      Random random = new Random(seed);
      List<Candidate[]> places = places(week);
      WeekScore score = filled(week, places);
      for (int i = 0; i < CHANGES; i++) {
        WeekDay day = week.getFacts().days().get(random.nextInt(places.size()));
        Candidate[] session = places.get(day.index());
        Change change = anyChange(day, session.length, random);
        HardMediumSoftScore before = sum(score);

        score.tryOut(day, session, change);
        change.exchange(session);
        assertThat(sum(score)).as("seed %d", seed).isEqualTo(searchScore(week, places));
        if (random.nextBoolean()) {
          change.exchange(session);
          score.undo(day, session, change);
          assertThat(sum(score)).as("undone, seed %d", seed).isEqualTo(before);
        }
      }
    }
  }

  private static Change anyChange(WeekDay day, int size, Random random) {
    Change change = new Change(size);
    change.clear(false);
    TreeSet<Integer> touched = new TreeSet<>();
    for (int i = 1 + random.nextInt(4); i > 0; i--) {
      touched.add(random.nextInt(size));
    }
    List<Candidate> candidates = day.facts().candidates();
    for (int place : touched) {
      Candidate candidate =
          random.nextInt(6) == 0 ? null : candidates.get(random.nextInt(candidates.size()));
      change.put(place, candidate);
    }
    return change;
  }

  private static List<Candidate[]> places(WeekSolution week) {
    return week.getFacts().days().stream()
        .map(
            day ->
                week.getPlaces().stream()
                    .filter(place -> place.getDay() == day)
                    .map(WeekPlace::getCandidate)
                    .toArray(Candidate[]::new))
        .toList();
  }

  private static HardMediumSoftScore searchScore(WeekSolution week, List<Candidate[]> places) {
    return sum(filled(week, places));
  }

  private static WeekScore filled(WeekSolution week, List<Candidate[]> places) {
    WeekScore score = new WeekScore(week.getFacts());
    week.getFacts().days().forEach(day -> score.add(day, places.get(day.index())));
    return score;
  }

  private static HardMediumSoftScore sum(WeekScore score) {
    return HardMediumSoftScore.of(score.hard(), score.medium(), score.soft());
  }

  /** Matches and points by constraint; one of weight 0 says nothing. */
  private static Map<String, List<Integer>> byConstraint(WeekSolution week) {
    Map<String, List<Integer>> sums = new TreeMap<>();
    for (WeekLedger.Entry entry : WeekLedger.of(week)) {
      int points = -entry.amount() * entry.constraint().weight(week.getFacts().problem());
      if (points != 0) {
        sums.merge(
            entry.constraint().id(),
            List.of(1, points),
            (a, b) -> List.of(a.get(0) + b.get(0), a.get(1) + b.get(1)));
      }
    }
    return sums;
  }

  private static Map<String, List<Integer>> byConstraint(
      ScoreAnalysis<HardMediumSoftScore> analysis) {
    Map<String, List<Integer>> sums = new TreeMap<>();
    analysis
        .constraintMap()
        .forEach(
            (ref, constraint) -> {
              HardMediumSoftScore score = constraint.score();
              int points = score.hardScore() + score.mediumScore() + score.softScore();
              if (constraint.matchCount() > 0 && points != 0) {
                sums.put(ref.constraintName(), List.of(constraint.matchCount(), points));
              }
            });
    return sums;
  }
}

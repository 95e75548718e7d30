package counterset.score;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.FilledWeek;
import counterset.fixture.RandomWeeks;
import counterset.model.Catalogue;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What drives the search for a week says the same as the ledger that explains it. */
class WeekScoreTest {

  private static final int WEEKS = 400;
  private static final int CHANGED_WEEKS = 60;
  private static final int CHANGES = 100;

  private final Catalogue catalogue = Catalogues.embedded();

  @Test
  void equalsTheLedgerOnRandomWeeks() {
    Map<String, Integer> seen = new TreeMap<>();
    for (long seed = 1; seed <= WEEKS; seed++) {
      FilledWeek week = new RandomWeeks(catalogue, seed).filled();
      int[] sums = new int[Level.values().length];
      for (WeekLedger.Entry entry : WeekLedger.of(week.facts(), week.places())) {
        Rule rule = entry.constraint().rule(week.facts().problem());
        sums[rule.level().ordinal()] += entry.amount() * rule.perUnit();
        seen.merge(entry.constraint().id(), 1, Integer::sum);
      }
      assertThat(points(afresh(week))).as("seed %d", seed).containsExactly(sums);
    }
    assertThat(seen.keySet())
        .as("constraints that matched at all")
        .containsExactlyInAnyOrderElementsOf(
            Constraints.OF_WEEKS.stream().map(Constraint::id).toList());
    assertThat(seen.values()).allMatch(count -> count > WEEKS / 20);
  }

  @Test
  void changesOfOneSessionLeadWhereTheWholeWeekLeads() {
    for (long seed = 1; seed <= CHANGED_WEEKS; seed++) {
      FilledWeek week = new RandomWeeks(catalogue, seed).filled();
      Random random = new Random(seed);
      WeekScore score = afresh(week);
      for (int i = 0; i < CHANGES; i++) {
        WeekDay day = week.facts().days().get(random.nextInt(week.sessions().size()));
        Candidate[] session = week.places().get(day.index());
        Change change = anyChange(day, session.length, random);
        int[] before = points(score);

        score.tryOut(day, session, change);
        change.exchange(session);
        assertThat(points(score)).as("seed %d", seed).containsExactly(points(afresh(week)));
        if (random.nextBoolean()) {
          change.exchange(session);
          score.undo(day, session, change);
          assertThat(points(score)).as("undone, seed %d", seed).containsExactly(before);
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

  private static WeekScore afresh(FilledWeek week) {
    WeekScore score = new WeekScore(week.facts());
    week.facts().days().forEach(day -> score.add(day, week.places().get(day.index())));
    return score;
  }

  private static int[] points(WeekScore score) {
    return new int[] {score.hard(), score.medium(), score.soft()};
  }
}

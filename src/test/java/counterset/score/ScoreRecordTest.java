package counterset.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * The constraints say of about two thousand sessions and weeks what was written down when each
 * constraint was specified by a constraint stream and both agreed: constraint by constraint, and
 * track by track.
 */
class ScoreRecordTest {

  private static final int FEWEST_CASES_OF_A_CONSTRAINT = 40;
  private static final int FEWEST_FEASIBLE = 300;
  private static final int MOST_SHOWN = 20;

  private static final ScoreRecord RECORD = ScoreRecord.read();

  @Test
  void everyScoreIsWhatTheRecordSays() {
    Scorer scorer = new Scorer(RECORD.catalogue());
    List<String> faults = new ArrayList<>();
    for (ScoreCase scoreCase : RECORD.cases()) {
      faults.addAll(faults(scoreCase, scorer.ledger(scoreCase)));
    }
    assertThat(faults.stream().limit(MOST_SHOWN))
        .as("the first of %d differences", faults.size())
        .isEmpty();
  }

  @Test
  void searchesAddUpTheSame() {
    Scorer scorer = new Scorer(RECORD.catalogue());
    for (ScoreCase scoreCase : RECORD.cases()) {
      assertThat(scorer.sum(scoreCase)).as("%s", scoreCase).isEqualTo(scoreCase.said().score());
    }
  }

  private static List<String> faults(ScoreCase scoreCase, Said found) {
    List<String> faults = new ArrayList<>();
    Said said = scoreCase.said();
    Set<String> keys = new TreeSet<>(said.tallies().keySet());
    keys.addAll(found.tallies().keySet());
    for (String key : keys) {
      Tally expected = said.tallies().get(key);
      Tally actual = found.tallies().get(key);
      if (expected == null || !expected.equals(actual)) {
        faults.add("%s: %s: expected %s, found %s".formatted(scoreCase, key, expected, actual));
      }
    }
    String expected = said.score();
    if (!expected.equals(found.score())) {
      faults.add("%s: score: expected %s, found %s".formatted(scoreCase, expected, found.score()));
    }
    return faults;
  }

  @Test
  void everyConstraintHasPointsInManyCases() {
    Set<String> all = new TreeSet<>(Scorer.sessionConstraints());
    all.addAll(Scorer.weekConstraints());
    Map<String, Integer> cases = new TreeMap<>();
    for (ScoreCase scoreCase : RECORD.cases()) {
      Set<String> own = new TreeSet<>();
      scoreCase
          .said()
          .tallies()
          .forEach(
              (key, tally) -> {
                if (tally.points() != 0) {
                  own.add(Said.constraint(key));
                }
              });
      own.forEach(id -> cases.merge(id, 1, Integer::sum));
    }
    assertThat(cases.keySet()).containsExactlyElementsOf(all);
    assertThat(cases)
        .allSatisfy((id, n) -> assertThat(n).isGreaterThan(FEWEST_CASES_OF_A_CONSTRAINT));
  }

  @Test
  void hundredsOfCasesBreakNoRule() {
    assertThat(RECORD.cases().stream().filter(scoreCase -> scoreCase.said().hard() == 0).count())
        .isGreaterThan(FEWEST_FEASIBLE);
  }
}

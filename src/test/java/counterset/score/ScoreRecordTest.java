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
 * Constraints whose meaning has not changed say of about two thousand sessions and weeks what was
 * written down when each was specified by a constraint stream and both agreed: constraint by
 * constraint, and track by track. Weights are not held, they change; nor are scores, which add up
 * what has changed as well.
 */
class ScoreRecordTest {

  /** They measure something else now than was written down. */
  private static final Set<String> CHANGED =
      Set.of(
          // Easy sets count half, and a region asks less of its muscle groups.
          "targetUncovered",
          // Seconds are free up to a limit.
          "changeoverSeconds",
          // Only the way down counts.
          "floorTrip",
          // Both look across rests only, and at how many patterns are wanted.
          "sameMuscleInARow",
          "jointAgain",
          // The order of work goes by tiers.
          "lightBeforeHeavy",
          // One item for another is one change, and what stands ready is free.
          "equipmentChange",
          // A load can be chosen.
          "tooEasy",
          // Asks for a loaded exercise of the same pattern.
          "unloaded",
          // Other shares.
          "oneSidedShare");

  private static final int FEWEST_CASES_OF_A_CONSTRAINT = 40;
  private static final int FEWEST_FEASIBLE = 300;
  private static final int MOST_SHOWN = 20;

  private static final ScoreRecord RECORD = ScoreRecord.read();

  @Test
  void unchangedConstraintsSayWhatTheRecordSays() {
    Scorer scorer = new Scorer(RECORD.catalogue());
    Set<String> held = held();
    List<String> faults = new ArrayList<>();
    for (ScoreCase scoreCase : RECORD.cases()) {
      faults.addAll(faults(scoreCase, scorer.ledger(scoreCase), held));
    }
    assertThat(faults.stream().limit(MOST_SHOWN))
        .as("the first of %d differences", faults.size())
        .isEmpty();
  }

  /** Else the record would hold it nowhere. */
  @Test
  void unevenVolumeIsHeldInManyCases() {
    Scorer scorer = new Scorer(RECORD.catalogue());
    assertThat(
            RECORD.cases().stream()
                .filter(it -> it.week().isEmpty())
                .map(scorer::ledger)
                .filter(said -> said.tallies().containsKey("unevenVolume")))
        .hasSizeGreaterThan(FEWEST_CASES_OF_A_CONSTRAINT);
  }

  @Test
  void searchesAddUpWhatTheLedgerWritesDown() {
    Scorer scorer = new Scorer(RECORD.catalogue());
    for (ScoreCase scoreCase : RECORD.cases()) {
      assertThat(scorer.sum(scoreCase))
          .as("%s", scoreCase)
          .isEqualTo(scorer.ledger(scoreCase).score());
    }
  }

  /** What was recorded and is still there. */
  private static Set<String> held() {
    Set<String> held = new TreeSet<>(Scorer.sessionConstraints());
    held.addAll(Scorer.weekConstraints());
    held.retainAll(cases().keySet());
    held.removeAll(CHANGED);
    return held;
  }

  private static List<String> faults(ScoreCase scoreCase, Said found, Set<String> held) {
    List<String> faults = new ArrayList<>();
    Said said = scoreCase.said();
    Set<String> keys = new TreeSet<>(said.tallies().keySet());
    keys.addAll(found.tallies().keySet());
    keys.removeIf(key -> !held.contains(Said.constraint(key)));
    keys.removeIf(key -> isSilent(key, scoreCase, found));
    for (String key : keys) {
      String expected = units(said.tallies().get(key));
      String actual = units(found.tallies().get(key));
      if (!expected.equals(actual)) {
        faults.add("%s: %s: expected %s, found %s".formatted(scoreCase, key, expected, actual));
      }
    }
    return faults;
  }

  /** Uneven volume says nothing now where whole regions are asked for, as on days of weeks. */
  private static boolean isSilent(String key, ScoreCase scoreCase, Said found) {
    return Said.constraint(key).equals("unevenVolume")
        && (scoreCase.week().isPresent() || !found.tallies().containsKey(key));
  }

  private static String units(Tally tally) {
    return tally == null ? "nothing" : tally.matches() + " matches of " + tally.amount();
  }

  @Test
  void everyConstraintHeldHasPointsInManyCases() {
    Map<String, Integer> cases = cases();
    assertThat(held())
        .hasSizeGreaterThan(MOST_SHOWN)
        .allSatisfy(id -> assertThat(cases.get(id)).isGreaterThan(FEWEST_CASES_OF_A_CONSTRAINT));
  }

  /** By constraint, in how many cases it has points. */
  private static Map<String, Integer> cases() {
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
    return cases;
  }

  @Test
  void hundredsOfCasesBreakNoRule() {
    assertThat(RECORD.cases().stream().filter(scoreCase -> scoreCase.said().hard() == 0).count())
        .isGreaterThan(FEWEST_FEASIBLE);
  }
}

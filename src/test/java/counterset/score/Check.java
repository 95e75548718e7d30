package counterset.score;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.SessionBuilder;
import java.util.Map;
import java.util.TreeMap;

/**
 * Holds one constraint to an amount, in units of its weight, for a session: what the ledger writes
 * down, and what the score that drives the search adds up.
 */
final class Check {

  private Check() {}

  static void costs(Class<? extends Constraint> constraint, int amount, SessionBuilder session) {
    assertThat(ledger(constraint, session)).as("ledger").isEqualTo(amount);
    assertThat(searched(constraint, session)).as("score").isEqualTo(-amount);
  }

  static void earns(Class<? extends Constraint> constraint, int amount, SessionBuilder session) {
    assertThat(ledger(constraint, session)).as("ledger").isEqualTo(amount);
    assertThat(searched(constraint, session)).as("score").isEqualTo(amount);
  }

  static void silent(Class<? extends Constraint> constraint, SessionBuilder session) {
    costs(constraint, 0, session);
  }

  private static int ledger(Class<? extends Constraint> constraint, SessionBuilder session) {
    return Ledger.of(session.lineup()).stream()
        .filter(entry -> constraint.isInstance(entry.constraint()))
        .mapToInt(Ledger.Entry::amount)
        .sum();
  }

  /** What the score says if all other constraints are switched off. */
  private static int searched(Class<? extends Constraint> constraint, SessionBuilder session) {
    Map<String, Integer> weights = new TreeMap<>();
    for (Constraint other : Constraints.OF_SESSIONS) {
      weights.put(other.id(), constraint.isInstance(other) ? 1 : 0);
    }
    Lineup lineup = session.weighing(weights);
    SessionScore own = new SessionScore(lineup.facts());
    own.compute(lineup.places());
    TrackScore tracks = new TrackScore(lineup.facts());
    tracks.compute(lineup.places(), lineup.standIns());
    return own.hard() + own.medium() + own.soft() + tracks.hard() + tracks.medium() + tracks.soft();
  }
}

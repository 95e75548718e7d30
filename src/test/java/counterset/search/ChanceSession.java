package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.score.Candidate;
import counterset.score.ExerciseFilter;
import counterset.score.Lineup;
import counterset.score.SessionFacts;
import counterset.score.SessionScore;
import counterset.timeline.SessionLength;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;

/**
 * The first complete session that breaks no rule, as chance finds it: superset by superset, the
 * first draw that fits. It is what a search starts from that does not look at points.
 */
public final class ChanceSession {

  private static final int DRAWS = 3_000;
  private static final int RESTARTS = 20;

  private final Lineup lineup;
  private final boolean[] kept;
  private final SessionScore score;
  private final Random random;

  private ChanceSession(Problem problem, Catalogue catalogue, long seed) {
    SessionFacts facts =
        new SessionFacts(
            problem,
            catalogue,
            new ExerciseFilter(problem, catalogue).main(),
            SessionLength.supersetsThatFit(problem.clock(), problem.minutes()));
    lineup = Lineup.empty(facts);
    kept = Task.Day.empty(lineup).pinned();
    score = new SessionScore(facts);
    random = new Random(seed);
  }

  /**
   * Its soft points; empty if chance finds none.
   *
   * @param problem without tracks
   */
  public static OptionalInt soft(Problem problem, Catalogue catalogue, long seed) {
    ChanceSession session = new ChanceSession(problem, catalogue, seed);
    for (int restart = 0; restart < RESTARTS; restart++) {
      if (session.isFilled()) {
        return OptionalInt.of(session.score.soft());
      }
    }
    return OptionalInt.empty();
  }

  private boolean isFilled() {
    for (int place = 0; place < kept.length; place++) {
      lineup.places()[place] = kept[place] ? lineup.places()[place] : null;
    }
    int perSuperset = lineup.facts().perSuperset();
    for (int first = 0; first < kept.length; first += perSuperset) {
      if (!fits(first, perSuperset)) {
        return false;
      }
    }
    return true;
  }

  private boolean fits(int start, int perSuperset) {
    List<Candidate> candidates = lineup.facts().candidates();
    Candidate[] places = lineup.places();
    for (int draw = 0; draw < DRAWS; draw++) {
      for (int place = start; place < start + perSuperset; place++) {
        if (!kept[place]) {
          places[place] = candidates.get(random.nextInt(candidates.size()));
        }
      }
      if (perSuperset == 2 && places[start].unilateral() && !kept[start + 1]) {
        places[start + 1] = places[start];
      }
      score.compute(places);
      if (score.hard() == 0) {
        return true;
      }
    }
    return false;
  }
}

package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Place;
import counterset.planning.scoring.SearchScore;
import java.util.List;

/**
 * Tells which moves are worth the solver's time: those that break no further rule or wish and cost
 * few points.
 *
 * <p>Most random moves are hopeless, and scoring one here costs a fraction of what the solver
 * spends on it. The allowance is several times the starting temperature, so that hardly a move is
 * lost that annealing would have accepted.
 */
final class Screen {

  private static final int ALLOWANCE = 25;

  private final SearchScore score;
  private final Candidate[] now;
  private int hard;
  private int medium;
  private int soft;

  Screen(SearchScore score, int places) {
    this.score = score;
    this.now = new Candidate[places];
  }

  /** Takes note of the solution that the next moves start from. */
  void look(List<Place> places) {
    for (int i = 0; i < now.length; i++) {
      now[i] = places.get(i).getCandidate();
    }
    score.compute(now);
    hard = score.hard();
    medium = score.medium();
    soft = score.soft();
  }

  boolean isPromising(FillMove move) {
    move.apply(now);
    score.compute(now);
    move.revert(now);
    if (score.hard() != hard) {
      return score.hard() > hard;
    }
    return score.medium() != medium ? score.medium() > medium : score.soft() >= soft - ALLOWANCE;
  }
}

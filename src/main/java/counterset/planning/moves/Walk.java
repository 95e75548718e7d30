package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Change;
import counterset.planning.SessionSolution;
import counterset.planning.scoring.SearchScore;

/**
 * An annealing walk: thousands of small changes, each kept if it gains or loses little.
 *
 * <p>A try costs a fraction of a microsecond here, where the solver would spend many on it. So the
 * solver is handed only where the walk leads, as one move.
 */
final class Walk {

  /** The share of the tries that only change a modification, where there are tracks. */
  private static final int RECAST_PERCENT = 5;

  private final Lineup lineup;
  private final SearchScore score;
  private final Dice dice;
  private final Proposals proposals;
  private final Change change;
  private final Candidate[] best;
  // Null where there are no tracks.
  private final Followers followers;
  private final Candidate[] bestStandIns;
  private long energy;
  private long bestEnergy = Long.MIN_VALUE;

  /**
   * A walk that starts from a solution.
   *
   * @param followers null if there are no tracks
   */
  Walk(SessionSolution solution, Pool pool, SearchScore score, Followers followers, Dice dice) {
    this.lineup = new Lineup(solution);
    this.score = score;
    this.dice = dice;
    this.proposals = new Proposals(lineup, pool, dice);
    this.change = new Change(lineup.size());
    this.best = new Candidate[lineup.size()];
    this.followers = followers;
    this.bestStandIns = new Candidate[solution.getStandIns().size()];
    score.compute(lineup.candidates());
    energy = Energy.of(score);
    if (followers != null) {
      followers.start(solution, lineup);
      energy += followers.energy();
    }
    remember();
  }

  /** Goes so many tries. */
  void go(Temperature temperature, int tries) {
    for (int i = 0; i < tries; i++) {
      double lowest = energy - temperature.loss(dice);
      if (followers != null && dice.nextInt(100) < RECAST_PERCENT) {
        recast(lowest);
      } else if (proposals.next(change)) {
        attempt(lowest);
      }
    }
  }

  /** What stood in each place at the best point of the walk. */
  Candidate[] best() {
    return best;
  }

  /** The stand-ins at the best point of the walk. */
  Candidate[] bestStandIns() {
    return bestStandIns;
  }

  private void attempt(double lowest) {
    score.tryOut(change);
    long tried = Energy.of(score);
    // Followers only take points away.
    if (tried < lowest) {
      return;
    }
    if (followers == null) {
      lineup.make(change);
    } else {
      followers.leave(lineup);
      lineup.make(change);
      followers.tryCast(lineup);
      tried += followers.energy();
      if (tried < lowest) {
        lineup.make(change);
        return;
      }
      followers.accept();
    }
    score.compute(lineup.candidates());
    arrive(tried);
  }

  private void recast(double lowest) {
    if (followers.tryAnother(lineup, dice)) {
      score.compute(lineup.candidates());
      long tried = Energy.of(score) + followers.energy();
      if (tried >= lowest) {
        followers.accept();
        arrive(tried);
      }
    }
  }

  private void arrive(long here) {
    energy = here;
    if (here > bestEnergy) {
      remember();
    }
  }

  private void remember() {
    bestEnergy = energy;
    System.arraycopy(lineup.candidates(), 0, best, 0, best.length);
    if (followers != null) {
      System.arraycopy(followers.standIns(), 0, bestStandIns, 0, bestStandIns.length);
    }
  }
}

package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Change;
import counterset.planning.Fence;
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
  private final Candidate[] bestPlaces;
  // Null where there are no tracks.
  private final Followers followers;
  private final Candidate[] bestStandIns;
  // Null where the walk may go anywhere.
  private final Fence fence;
  private Energy measure = Energy.STRICT;
  private long here;
  private long best;

  /**
   * A walk that starts from a solution.
   *
   * @param followers null if there are no tracks
   */
  Walk(SessionSolution solution, Pool pool, SearchScore score, Followers followers, Dice dice) {
    this.lineup = new Lineup(solution);
    this.score = score;
    this.dice = dice;
    this.fence = solution.getFence();
    this.proposals = new Proposals(lineup, pool, dice, fence);
    this.change = new Change(lineup.size());
    this.bestPlaces = new Candidate[lineup.size()];
    this.followers = followers;
    this.bestStandIns = new Candidate[solution.getStandIns().size()];
    score.compute(lineup.candidates());
    if (followers != null) {
      followers.start(solution, lineup);
    }
    remember(strictly());
  }

  /** Goes so many tries. */
  void go(Temperature temperature, Energy by, int tries) {
    measure = by;
    here = by.of(score) + (followers == null ? 0 : followers.energy(by));
    for (int i = 0; i < tries; i++) {
      double lowest = here - temperature.loss(dice);
      if (followers != null && dice.nextInt(100) < RECAST_PERCENT) {
        recast(lowest);
      } else if (proposals.next(change)) {
        attempt(lowest);
      }
    }
  }

  /** Returns to the best point of the walk. */
  void goBack() {
    lineup.restore(bestPlaces);
    score.compute(bestPlaces);
    if (followers != null) {
      followers.restore(bestStandIns, lineup);
    }
  }

  /** What stood in each place at the best point of the walk. */
  Candidate[] bestPlaces() {
    return bestPlaces;
  }

  /** The stand-ins at the best point of the walk. */
  Candidate[] bestStandIns() {
    return bestStandIns;
  }

  private void attempt(double lowest) {
    score.tryOut(change);
    long tried = measure.of(score);
    // Followers only take points away.
    if (tried < lowest) {
      return;
    }
    if (followers != null) {
      followers.leave(lineup);
    }
    lineup.make(change);
    if (fence != null && !fence.admits(lineup.candidates())) {
      lineup.make(change);
      return;
    }
    if (followers != null) {
      followers.tryCast(lineup);
      tried += followers.energy(measure);
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
      long tried = measure.of(score) + followers.energy(measure);
      if (tried >= lowest) {
        followers.accept();
        arrive(tried);
      }
    }
  }

  private void arrive(long tried) {
    here = tried;
    long strictly = measure == Energy.STRICT ? tried : strictly();
    if (strictly > best) {
      remember(strictly);
    }
  }

  private long strictly() {
    return Energy.STRICT.of(score) + (followers == null ? 0 : followers.energy(Energy.STRICT));
  }

  private void remember(long strictly) {
    best = strictly;
    System.arraycopy(lineup.candidates(), 0, bestPlaces, 0, bestPlaces.length);
    if (followers != null) {
      System.arraycopy(followers.standIns(), 0, bestStandIns, 0, bestStandIns.length);
    }
  }
}

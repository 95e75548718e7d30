package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Change;
import counterset.planning.SessionSolution;
import counterset.planning.WeekDay;
import counterset.planning.scoring.SearchScore;

/** One session of a week while a walk changes it. */
final class DayWalk {

  final WeekDay day;
  final Lineup lineup;
  final SearchScore score;
  final Change change;
  // Null where there are no tracks.
  final Followers followers;
  private final Proposals proposals;
  private final Candidate[] best;
  private final Candidate[] bestStandIns;
  private boolean changed = true;

  /** Of the session by itself, its followers included. */
  long energy;

  DayWalk(DayTools tools, SessionSolution session, Dice dice) {
    day = tools.day;
    lineup = new Lineup(session);
    score = tools.score;
    change = new Change(lineup.size());
    followers = tools.followers;
    proposals = new Proposals(lineup, tools.pool, dice);
    best = new Candidate[lineup.size()];
    bestStandIns = new Candidate[session.getStandIns().size()];
    score.compute(lineup.candidates());
    energy = Energy.STRICT.of(score);
    if (followers != null) {
      followers.start(session, lineup);
      energy += followers.energy(Energy.STRICT);
    }
    remember();
  }

  /** Makes up a change; false if this one cannot be made. */
  boolean propose() {
    return proposals.next(change);
  }

  /** Takes note that the session is another one now. */
  void arrive(long here) {
    energy = here;
    changed = true;
  }

  /** Keeps the session as it is as the best so far. */
  void remember() {
    if (changed) {
      System.arraycopy(lineup.candidates(), 0, best, 0, best.length);
      if (followers != null) {
        System.arraycopy(followers.standIns(), 0, bestStandIns, 0, bestStandIns.length);
      }
      changed = false;
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
}

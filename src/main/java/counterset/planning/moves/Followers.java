package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Cast;
import counterset.planning.Ranking;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import counterset.planning.scoring.TrackScore;

/** What the followers of the tracks do while the session is being changed, and what that costs. */
final class Followers {

  private final TrackScore score;
  private final Cast cast;
  private final Ranking ranking;
  private final Candidate[] before;
  private final Candidate[] standIns;
  private final Candidate[] tried;

  Followers(SessionFacts facts) {
    int places = facts.supersets() * facts.perSuperset();
    ranking = new Ranking(facts);
    score = new TrackScore(facts);
    cast = new Cast(facts, ranking);
    before = new Candidate[places];
    standIns = new Candidate[places * facts.tracks()];
    tried = new Candidate[standIns.length];
  }

  /** Takes over the stand-ins of a solution. */
  void start(SessionSolution solution, Lineup lineup) {
    for (int i = 0; i < standIns.length; i++) {
      standIns[i] = solution.getStandIns().get(i).getCandidate();
    }
    score.compute(lineup.candidates(), standIns);
  }

  /** Stand-ins by track and place, as they are; to be read only. */
  Candidate[] standIns() {
    return standIns;
  }

  /** Goes back to stand-ins of before. */
  void restore(Candidate[] earlier, Lineup lineup) {
    System.arraycopy(earlier, 0, standIns, 0, standIns.length);
    score.compute(lineup.candidates(), standIns);
  }

  /** Takes note of the session that the next change starts from. */
  void leave(Lineup lineup) {
    System.arraycopy(lineup.candidates(), 0, before, 0, before.length);
  }

  /** Chooses the stand-ins that the changed session asks for. */
  void tryCast(Lineup lineup) {
    cast.choose(before, standIns, lineup.candidates(), tried);
    score.compute(lineup.candidates(), tried);
  }

  /** Chooses another modification at one place of one track; false if this one cannot be made. */
  boolean tryAnother(Lineup lineup, Dice dice) {
    int standIn = dice.nextInt(standIns.length);
    if (standIns[standIn] == null) {
      return false;
    }
    Candidate other = Recasts.any(lineup, ranking, standIns, standIn, dice);
    if (other == null) {
      return false;
    }
    System.arraycopy(standIns, 0, tried, 0, standIns.length);
    tried[standIn] = other;
    score.compute(lineup.candidates(), tried);
    return true;
  }

  /** Takes what was tried last. */
  void accept() {
    System.arraycopy(tried, 0, standIns, 0, standIns.length);
  }

  /** Of what was tried last. */
  long energy(Energy measure) {
    return measure.of(score);
  }
}

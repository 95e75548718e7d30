package counterset.search;

import counterset.score.Candidate;

/** Other modifications for the followers of one track at one place. */
final class Recasts {

  private static final int NEARLY_BEST = 20;

  private Recasts() {}

  /**
   * Another of the least awkward modifications; null where the one drawn is on the track already.
   */
  static Candidate any(Board board, Ranking ranking, Candidate[] standIns, int standIn, Dice dice) {
    int track = standIn / board.size();
    Candidate main = board.at(standIn % board.size());
    Ranking.Ranked ranked = ranking.of(main, track);
    Candidate other = ranked.candidates()[dice.nextInt(Math.min(NEARLY_BEST, ranked.preferred()))];
    return isOnTrack(other, track, board, standIns) ? null : other;
  }

  private static boolean isOnTrack(
      Candidate candidate, int track, Board board, Candidate[] standIns) {
    for (int place = 0; place < board.size(); place++) {
      Candidate main = board.at(place);
      if (main != null) {
        Candidate done = main.isUnsuited(track) ? standIns[track * board.size() + place] : main;
        if (done != null && done.root() == candidate.root()) {
          return true;
        }
      }
    }
    return false;
  }
}

package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Ranking;

/** Other modifications for the followers of one track at one place. */
final class Recasts {

  private static final int NEARLY_BEST = 20;

  private Recasts() {}

  /**
   * Another of the least awkward modifications; null where the one drawn is on the track already.
   */
  static Candidate any(
      Lineup lineup, Ranking ranking, Candidate[] standIns, int standIn, Dice dice) {
    int track = standIn / lineup.size();
    Candidate main = lineup.at(standIn % lineup.size());
    Ranking.Ranked ranked = ranking.of(main, track);
    Candidate other = ranked.candidates()[dice.nextInt(Math.min(NEARLY_BEST, ranked.preferred()))];
    return isOnTrack(other, track, lineup, standIns) ? null : other;
  }

  private static boolean isOnTrack(
      Candidate candidate, int track, Lineup lineup, Candidate[] standIns) {
    for (int place = 0; place < lineup.size(); place++) {
      Candidate main = lineup.at(place);
      if (main != null) {
        Candidate done = main.isUnsuited(track) ? standIns[track * lineup.size() + place] : main;
        if (done != null && done.root() == candidate.root()) {
          return true;
        }
      }
    }
    return false;
  }
}

package counterset.search;

import counterset.score.Candidate;
import counterset.score.Change;
import counterset.score.SessionFacts;
import counterset.score.TrackScore;
import counterset.score.Turns;

/**
 * What the followers of the tracks do once a change is made, and what that costs. They keep their
 * modifications where they can. It serves one thread.
 */
final class FollowerCast {

  /** How many of the least awkward modifications are tried where the first is not good enough. */
  private static final int NEARLY_BEST = 20;

  private final SessionFacts facts;
  private final Ranking ranking;
  private final Cast cast;
  private final TrackScore score;
  private final Candidate[] before;
  private final Candidate[] standIns;

  /**
   * Followers of a session.
   *
   * @param before their modifications by track and place, null where there is none
   */
  FollowerCast(SessionFacts facts, Candidate[] before) {
    this.facts = facts;
    this.before = before;
    this.ranking = new Ranking(facts);
    this.cast = new Cast(facts, ranking);
    this.score = new TrackScore(facts);
    this.standIns = new Candidate[before.length];
  }

  /** Modifications by track and place, as last chosen; to be read only. */
  Candidate[] standIns() {
    return standIns;
  }

  /**
   * Chooses modifications as the search does.
   *
   * @param left what the change leaves as it is
   * @param filled what stands in the places after it
   */
  Worth choose(Candidate[] left, Candidate[] filled) {
    cast.choose(left, before, filled, standIns);
    return worth(filled);
  }

  /**
   * Tries others near the change that was last chosen for, if a rule is broken or a wish unmet;
   * each place once.
   */
  Worth improve(Candidate[] filled, Change change) {
    Worth best = worth(filled);
    int perSuperset = facts.perSuperset();
    int first = (change.place(0) / perSuperset - 1) * perSuperset;
    int end = (change.place(change.size() - 1) / perSuperset + 2) * perSuperset;
    for (int track = 0; track < facts.tracks(); track++) {
      for (int place = Math.max(0, first); place < Math.min(filled.length, end); place++) {
        if (isWanting(best) && isOpen(filled, place, track)) {
          best = improve(filled, place, track, best);
        }
      }
    }
    return best;
  }

  private static boolean isWanting(Worth worth) {
    return worth.hard() < 0 || worth.medium() < 0;
  }

  private boolean isOpen(Candidate[] filled, int place, int track) {
    return filled[place] != null
        && filled[place].isUnsuited(track)
        && Turns.firstSide(filled, place - place % facts.perSuperset(), place) == place;
  }

  private Worth improve(Candidate[] filled, int place, int track, Worth soFar) {
    Worth best = soFar;
    int standIn = track * filled.length + place;
    Candidate chosen = standIns[standIn];
    Ranking.Ranked ranked = ranking.of(filled[place], track);
    for (int i = 0; i < Math.min(NEARLY_BEST, ranked.candidates().length); i++) {
      standIns[standIn] = ranked.candidates()[i];
      Worth tried = worth(filled);
      if (tried.compareTo(best) > 0) {
        best = tried;
        chosen = ranked.candidates()[i];
      }
    }
    standIns[standIn] = chosen;
    return best;
  }

  private Worth worth(Candidate[] filled) {
    score.compute(filled, standIns);
    return new Worth(score.hard(), score.medium(), score.soft());
  }
}

package counterset.planning.moves;

import counterset.planning.scoring.SearchScore;
import counterset.planning.scoring.TrackScore;
import counterset.planning.scoring.WeekScore;

/**
 * A score as one number that keeps its order: no number of points makes up for a broken rule or
 * wish.
 */
final class Energy {

  private static final int LEVEL_BITS = 20;

  private Energy() {}

  static long of(SearchScore score) {
    return of(score.hard(), score.medium(), score.soft());
  }

  static long of(TrackScore score) {
    return of(score.hard(), score.medium(), score.soft());
  }

  static long of(WeekScore score) {
    return of(score.hard(), score.medium(), score.soft());
  }

  private static long of(int hard, int medium, int soft) {
    return ((long) hard << 2 * LEVEL_BITS) + ((long) medium << LEVEL_BITS) + soft;
  }
}

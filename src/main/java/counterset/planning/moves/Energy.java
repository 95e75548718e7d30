package counterset.planning.moves;

import counterset.planning.scoring.SearchScore;
import counterset.planning.scoring.TrackScore;
import counterset.planning.scoring.WeekScore;

/**
 * A score as one number.
 *
 * @param perHard what a broken rule weighs, in points
 * @param perMedium what an unmet wish weighs, in points
 */
record Energy(long perHard, long perMedium) {

  /** Keeps the order of scores: no number of points makes up for a broken rule or wish. */
  static final Energy STRICT = new Energy(1L << 40, 1L << 20);

  /** Lets a very hot walk break a rule or forgo a wish for a while. */
  static final Energy SURVEY = new Energy(64, 160);

  /** Likewise for a warm walk. */
  static final Energy DETOUR = new Energy(5, 40);

  long of(SearchScore score) {
    return of(score.hard(), score.medium(), score.soft());
  }

  long of(TrackScore score) {
    return of(score.hard(), score.medium(), score.soft());
  }

  long of(WeekScore score) {
    return of(score.hard(), score.medium(), score.soft());
  }

  long of(int hard, int medium, int soft) {
    return perHard * hard + perMedium * medium + soft;
  }
}

package counterset.planning.moves;

import counterset.planning.SessionSolution;
import counterset.planning.WeekDay;
import counterset.planning.WeekFacts;
import counterset.planning.scoring.SearchScore;

/** What changes of one session of a week are made and scored with; kept from walk to walk. */
final class DayTools {

  final WeekDay day;
  final Pool pool;
  final SearchScore score;
  // Null where there are no tracks.
  final Followers followers;

  DayTools(WeekDay day) {
    this.day = day;
    this.pool = Pool.of(day.facts());
    this.score = new SearchScore(day.facts());
    this.followers = day.facts().tracks() > 0 ? new Followers(day.facts()) : null;
  }

  /** Those of all sessions of a week. */
  static DayTools[] of(WeekFacts facts) {
    return facts.days().stream().map(DayTools::new).toArray(DayTools[]::new);
  }

  /** Whether there is anything to decide: a day whose places are all kept stays as it is. */
  static boolean isMovable(SessionSolution session) {
    return session.getPlaces().stream().anyMatch(place -> !place.isPinned())
        && !session.getFacts().candidates().isEmpty();
  }
}

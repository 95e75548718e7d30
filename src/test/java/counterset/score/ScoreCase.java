package counterset.score;

import counterset.model.WeekProblem;
import java.util.List;
import java.util.Optional;

/**
 * A session or a week, and what the constraints say of it.
 *
 * @param number its line in the record, from 1
 * @param week empty for a session by itself
 * @param sessions one, or those of the week in its order
 */
record ScoreCase(int number, Optional<WeekProblem> week, List<Filled> sessions, Said said) {

  @Override
  public String toString() {
    return "case " + number + (week.isPresent() ? " (week)" : " (session)");
  }
}

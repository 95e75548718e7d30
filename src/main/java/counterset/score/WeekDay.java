package counterset.score;

/**
 * One session of a week.
 *
 * @param index its number in the problem, from 0
 * @param day its day, 0 for Monday to 6 for Sunday
 */
public record WeekDay(int index, int day, SessionFacts facts) {

  /** Identity is enough: a week has each of its days once. */
  @Override
  public boolean equals(Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return index;
  }
}

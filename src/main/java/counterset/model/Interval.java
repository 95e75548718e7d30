package counterset.model;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * One interval of a session's clock, in seconds from its beginning.
 *
 * @param at the superset and position of work; of a switch or a rest, the position that has just
 *     ended
 * @param round from 1, where a superset is done more than once
 * @param exercise what is done in it
 */
public record Interval(
    int start,
    int end,
    IntervalKind kind,
    Optional<At> at,
    OptionalInt round,
    Optional<Exercise> exercise,
    Optional<Side> side) {

  public Interval {
    if (start < 0 || end <= start) {
      throw new IllegalArgumentException(
          "An interval (" + start + " to " + end + " s) must end after it starts.");
    }
  }

  /** Its length, at least 1. */
  public int seconds() {
    return end - start;
  }
}

package counterset.planning.scoring;

import counterset.planning.constraints.SessionConstraint;

/** Takes in the matches of the constraints, one call a match. */
public interface ScoreSink {

  /** A place that a match does not have. */
  int NOWHERE = -1;

  /** The session itself, as those do it whom everything suits. */
  int MAIN = -1;

  /**
   * A match of the session itself; see {@link #match(SessionConstraint, int, int, int, int, int)}.
   */
  default void match(SessionConstraint constraint, int amount, int first, int second, int detail) {
    match(constraint, amount, first, second, detail, MAIN);
  }

  /**
   * A match.
   *
   * @param amount how many units of the constraint's weight, at least 1
   * @param first the index of the place it happens at, or {@link #NOWHERE}
   * @param second the index of the other place, or {@link #NOWHERE}
   * @param detail what it is about where no place tells: the index of a target, item or wish of the
   *     problem, or of the candidate that is a modification
   * @param track the track whose followers it concerns, or {@link #MAIN}
   */
  void match(
      SessionConstraint constraint, int amount, int first, int second, int detail, int track);
}

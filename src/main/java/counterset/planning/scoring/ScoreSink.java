package counterset.planning.scoring;

import counterset.planning.constraints.SessionConstraint;

/** Takes in the matches of the constraints, one call a match. */
public interface ScoreSink {

  /** A place that a match does not have. */
  int NOWHERE = -1;

  /**
   * A match.
   *
   * @param amount how many units of the constraint's weight, at least 1
   * @param first the index of the place it happens at, or {@link #NOWHERE}
   * @param second the index of the other place, or {@link #NOWHERE}
   * @param detail what it is about where no place tells: the index of a target, item or wish of the
   *     problem
   */
  void match(SessionConstraint constraint, int amount, int first, int second, int detail);
}

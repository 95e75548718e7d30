package counterset.bound;

import counterset.model.Problem;
import counterset.planning.constraints.SessionConstraint;

/**
 * The weights of a problem, as far as a limit needs them.
 *
 * <p>A cost may be counted too low without making a limit wrong, so very large weights of costs are
 * cut off; those of rewards must not be.
 */
record Weights(Problem problem) {

  /** The largest weight that is counted in full. */
  static final int LARGEST = 2000;

  /** Whether the rewards are small enough to be added up safely. */
  boolean isBounded() {
    return SessionConstraint.OPPOSING_PAIR.weight(problem) <= LARGEST
        && SessionConstraint.LIKES.weight(problem) <= LARGEST;
  }

  int of(SessionConstraint constraint) {
    return Math.min(LARGEST, constraint.weight(problem));
  }

  /** Whether breaking it costs anything. */
  boolean matters(SessionConstraint constraint) {
    return constraint.weight(problem) > 0;
  }
}

package counterset.bound;

import counterset.model.Problem;
import counterset.score.Constraint;
import counterset.score.Constraints;

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
    return Constraints.OF_SESSIONS.stream()
        .filter(Constraint::isReward)
        .allMatch(constraint -> constraint.weight(problem.weights()) <= LARGEST);
  }

  /** The weight of a constraint as it is. */
  <C extends Constraint> int inFull(Class<C> constraint) {
    return Constraints.the(constraint).weight(problem.weights());
  }

  <C extends Constraint> int of(Class<C> constraint) {
    return Math.min(LARGEST, inFull(constraint));
  }

  int of(Constraint constraint) {
    return Math.min(LARGEST, constraint.weight(problem.weights()));
  }

  boolean matters(Constraint constraint) {
    return constraint.weight(problem.weights()) > 0;
  }

  /** Whether breaking it costs anything. */
  boolean matters(Class<? extends Constraint> constraint) {
    return inFull(constraint) > 0;
  }

  /** The largest of all that are counted. */
  int heaviest() {
    return Constraints.OF_SESSIONS.stream().mapToInt(this::of).max().orElse(0);
  }
}

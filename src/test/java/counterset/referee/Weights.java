package counterset.referee;

import counterset.model.Problem;
import counterset.score.Constraint;
import counterset.score.Constraints;
import counterset.score.Level;

/** The points of one unit of each constraint in one problem. */
final class Weights {

  private final Problem problem;

  /**
   * Reads them from a problem.
   *
   * @throws IllegalArgumentException if the problem switches a rule off: rules are no points here
   */
  Weights(Problem problem) {
    this.problem = problem;
    for (Constraint constraint : Constraints.OF_SESSIONS) {
      if (constraint.level() == Level.HARD && constraint.weight(problem.weights()) == 0) {
        throw new IllegalArgumentException(
            "The weight of the rule ("
                + constraint.id()
                + ") is 0, but the referee takes every rule as binding. Maybe leave it at 1.");
      }
    }
  }

  /** At least 0. */
  int of(Class<? extends Constraint> constraint) {
    return Constraints.the(constraint).weight(problem.weights());
  }
}

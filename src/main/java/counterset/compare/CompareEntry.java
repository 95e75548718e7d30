package counterset.compare;

import counterset.model.Plan;
import counterset.model.Problem;
import java.util.Optional;

/**
 * Something to be compared: a plan that there is, or a problem to be planned first.
 *
 * @param label what tells it from the others
 * @param plan the plan; without one the problem is planned
 */
public record CompareEntry(String label, Problem problem, Optional<Plan> plan) {

  /** A problem to be planned. */
  public static CompareEntry planned(String label, Problem problem) {
    return new CompareEntry(label, problem, Optional.empty());
  }

  /** With another seed, if it is to be planned. */
  public CompareEntry withSeed(long seed) {
    return plan.isPresent() ? this : planned(label, problem.withSeed(seed));
  }
}

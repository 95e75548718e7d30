package counterset.cli;

import counterset.model.Problem;
import counterset.problem.PlanFile;
import java.util.Optional;

/**
 * Something to be compared: a plan that there is, or a problem to be planned first.
 *
 * @param label what tells it from the others
 * @param file the plan; without one the problem is planned
 */
record CompareEntry(String label, Problem problem, Optional<PlanFile> file) {

  static CompareEntry planned(String label, Problem problem) {
    return new CompareEntry(label, problem, Optional.empty());
  }

  CompareEntry withSeed(long seed) {
    return file.isPresent() ? this : planned(label, problem.withSeed(seed));
  }
}

package counterset.cli;

import counterset.json.Violation;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.typed.Taken;
import java.util.List;

/**
 * A session that was read to be checked.
 *
 * @param plan what it works out to
 * @param lines what each line was taken for, if it was typed
 * @param readAs what it is judged by, if it was typed
 * @param differences what the file says otherwise
 */
record Checked(Plan plan, List<Taken> lines, List<String> readAs, List<Violation> differences) {

  List<String> faults(Catalogue catalogue) {
    return Feasibility.hardFaults(plan, catalogue);
  }

  List<String> wishes(Catalogue catalogue) {
    return Feasibility.unmetWishes(plan, catalogue);
  }

  boolean feasible() {
    return Feasibility.isFeasible(plan);
  }

  /** The exit status of a check. */
  int status() {
    return feasible() ? differences.isEmpty() ? Exit.DONE : Exit.BAD_INPUT : Exit.INFEASIBLE;
  }
}

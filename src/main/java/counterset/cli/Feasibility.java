package counterset.cli;

import counterset.explain.FaultWords;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.timeline.SessionLength;
import java.util.ArrayList;
import java.util.List;

/** Whether a plan can be handed out, and why not. */
final class Feasibility {

  private Feasibility() {}

  /** A session without work is none. */
  static boolean isFeasible(Plan plan) {
    return plan.score().feasible() && plan.totals().supersets() > 0;
  }

  /** What stands in the way, one line each, and what would free it. */
  static List<String> reasons(Plan plan, Catalogue catalogue) {
    List<String> lines = new ArrayList<>();
    Problem problem = plan.problem();
    int shortest = SessionLength.seconds(problem.clock(), 1);
    if (shortest > 60 * problem.minutes()) {
      int minutes = (shortest + 59) / 60;
      lines.add(
          "No feasible session: the shortest one with this clock takes "
              + shortest
              + " s (get ready "
              + problem.clock().getReady()
              + ", warm-up "
              + problem.clock().warmUp()
              + ", one superset "
              + SessionLength.blockSeconds(problem.clock()) * problem.clock().rounds()
              + ", cool-down "
              + problem.clock().coolDown()
              + "), but the cap is "
              + problem.minutes()
              + " min.");
      lines.add(
          "What would free it: "
              + minutes
              + " min, or a clock that is "
              + (shortest - 60 * problem.minutes())
              + " s shorter.");
      return lines;
    }
    if (plan.totals().supersets() == 0 && plan.score().feasible()) {
      lines.add("No feasible session: no exercise of the catalogue suits all that was asked for.");
      lines.add(
          "What would free it: more targets, a limitation fewer, a higher level, or more equipment.");
      return lines;
    }
    lines.add("No feasible session: the best one found still breaks a rule.");
    hardFaults(plan, catalogue).forEach(lines::add);
    return lines;
  }

  /** Every broken rule with its place, one line each. */
  static List<String> hardFaults(Plan plan, Catalogue catalogue) {
    return plan.matches().stream()
        .filter(FaultWords::isBrokenRule)
        .map(match -> FaultWords.of(match, plan, catalogue))
        .toList();
  }

  /** Every unmet wish of those that matter most, one line each. */
  static List<String> unmetWishes(Plan plan, Catalogue catalogue) {
    return plan.matches().stream()
        .filter(match -> FaultWords.isFault(match) && !FaultWords.isBrokenRule(match))
        .map(match -> FaultWords.of(match, plan, catalogue))
        .toList();
  }
}

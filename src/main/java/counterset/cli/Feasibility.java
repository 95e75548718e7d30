package counterset.cli;

import counterset.explain.FaultWords;
import counterset.model.Catalogue;
import counterset.model.Plan;
import java.util.List;

/** Whether a plan can be handed out, and why not. */
final class Feasibility {

  private Feasibility() {}

  /** A session without work is none. */
  static boolean isFeasible(Plan plan) {
    return plan.score().feasible() && plan.totals().supersets() > 0;
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

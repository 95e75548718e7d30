package counterset.cli;

import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.review.Refusal;
import counterset.search.WaysOut;

/** Says on standard error why a plan is not all that was asked for, and what would free it. */
final class Explanation {

  private Explanation() {}

  /** There is no session to hand out. */
  static void ofRefusal(Shell shell, Plan plan, Catalogue catalogue) {
    Refusal refusal = new Refusal(plan, catalogue);
    refusal.reasons().forEach(shell::say);
    waysOut(shell, refusal);
  }

  /** There is one, and it leaves wishes unmet; says nothing where it meets them all. */
  static void ofUnmetWishes(Shell shell, Plan plan, Catalogue catalogue) {
    if (plan.score().medium() < 0) {
      Refusal refusal = new Refusal(plan, catalogue);
      refusal.unmetWishes().forEach(shell::say);
      waysOut(shell, refusal);
    }
  }

  private static void waysOut(Shell shell, Refusal refusal) {
    if (refusal.plan().solver().complete()) {
      WaysOut search = new WaysOut(refusal.plan(), refusal.catalogue());
      refusal
          .remedies(
              Interruption.during(
                  () -> Progress.during(shell, "Looking for a way out", search::find),
                  search::stop))
          .forEach(shell::say);
    }
  }
}

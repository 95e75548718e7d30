package counterset.compare;

import counterset.model.Exercise;
import counterset.model.Plan;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One of the plans that are compared.
 *
 * @param number from 1, in the order in which they were asked for
 * @param label what tells it from the others: how it was varied, its file, its ask
 * @param reasons why it cannot be led, a sentence each; empty if it can
 * @param wishes that it leaves unmet, a sentence each
 */
public record Compared(
    int number, String label, Plan plan, Facts facts, List<String> reasons, List<String> wishes) {

  public Compared {
    reasons = List.copyOf(reasons);
    wishes = List.copyOf(wishes);
  }

  /** A plan with its figures. */
  public Compared(int number, String label, Plan plan, List<String> reasons, List<String> wishes) {
    this(number, label, plan, Facts.of(plan), reasons, wishes);
  }

  /** Whether it can be led. */
  public boolean feasible() {
    return facts.feasible();
  }

  /** Its exercises; variants of one exercise count as the same. */
  Set<String> exercises() {
    return plan.session().work().map(Exercise::root).collect(Collectors.toSet());
  }
}

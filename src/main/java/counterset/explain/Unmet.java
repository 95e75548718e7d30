package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.Plan;
import java.util.List;

/** What a plan leaves unmet, each with its place. */
public final class Unmet {

  private Unmet() {}

  /** Every broken rule, one line each. */
  public static List<String> rules(Plan plan, Catalogue catalogue) {
    return plan.matches().stream()
        .filter(FaultWords::isBrokenRule)
        .map(match -> FaultWords.of(match, plan, catalogue))
        .toList();
  }

  /** Every unmet wish of those that matter most, one line each. */
  public static List<String> wishes(Plan plan, Catalogue catalogue) {
    return plan.matches().stream()
        .filter(match -> FaultWords.isFault(match) && !FaultWords.isBrokenRule(match))
        .map(match -> FaultWords.of(match, plan, catalogue))
        .toList();
  }
}

package counterset.report;

import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Plan;
import java.util.List;
import java.util.Optional;

/**
 * What could stand at a place of a plan.
 *
 * @param standing what stands there; empty if nothing does
 * @param choices those shown of the replacements that break no rule, the best first
 * @param choicesInAll how many there are
 * @param breaking those shown of the replacements that would break a rule, the least broken first
 * @param breakingInAll how many there are
 */
public record SwapList(
    Plan plan,
    At at,
    Optional<Exercise> standing,
    List<SwapChoice> choices,
    int choicesInAll,
    List<SwapChoice> breaking,
    int breakingInAll) {

  public SwapList {
    choices = List.copyOf(choices);
    breaking = List.copyOf(breaking);
  }
}

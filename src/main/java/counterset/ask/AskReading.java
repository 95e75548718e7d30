package counterset.ask;

import counterset.model.Problem;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How an ask was read.
 *
 * @param problem the complete problem; present if and only if there are no faults
 * @param echo how it was read, one plain line a topic, assumptions marked as such; empty if there
 *     are faults
 * @param faults all that is wrong, in the order of the ask
 * @param assumed what the ask was silent about, so that a default stands in the problem
 */
public record AskReading(
    Optional<Problem> problem, List<String> echo, List<AskFault> faults, Set<AskTopic> assumed) {

  public AskReading {
    echo = List.copyOf(echo);
    faults = List.copyOf(faults);
    assumed = Set.copyOf(assumed);
    if (problem.isPresent() != faults.isEmpty()) {
      throw new IllegalArgumentException("An ask is read into a problem or into faults, not both.");
    }
  }
}

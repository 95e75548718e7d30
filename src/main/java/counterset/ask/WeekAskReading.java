package counterset.ask;

import counterset.model.WeekProblem;
import java.util.List;
import java.util.Optional;

/**
 * How the ask for a week was read.
 *
 * @param problem the complete problem; present if and only if there are no faults
 * @param echo how it was read: the days, what holds for all of them, what holds for each; empty if
 *     there are faults
 * @param faults all that is wrong, in the order of the ask
 */
public record WeekAskReading(
    Optional<WeekProblem> problem, List<String> echo, List<AskFault> faults) {

  public WeekAskReading {
    echo = List.copyOf(echo);
    faults = List.copyOf(faults);
    if (problem.isPresent() != faults.isEmpty()) {
      throw new IllegalArgumentException("An ask is read into a problem or into faults, not both.");
    }
  }
}

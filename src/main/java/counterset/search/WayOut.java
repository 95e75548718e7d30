package counterset.search;

import counterset.model.Plan;
import counterset.model.Problem;
import java.util.List;

/**
 * A smallest set of changes that helps, tried out.
 *
 * @param phrases the changes in a coach's words, the cheapest first; never empty
 * @param problem what is asked for after them
 * @param plan the plan that was found for it
 * @param whole whether it frees all that was in the way, and not only a part
 */
public record WayOut(List<String> phrases, Problem problem, Plan plan, boolean whole) {

  public WayOut {
    phrases = List.copyOf(phrases);
  }

  /** All of its changes in one phrase. */
  public String phrase() {
    return String.join(", and ", phrases);
  }
}

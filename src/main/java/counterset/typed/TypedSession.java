package counterset.typed;

import counterset.model.Problem;
import counterset.model.Session;
import java.util.List;

/**
 * A session as it was typed, and what it is judged by.
 *
 * @param session what was typed, nothing added
 * @param warmUpTyped whether warm-up moves were typed; else it is left to the program
 * @param coolDownTyped whether cool-down moves were typed; else it is left to the program
 * @param readAs what the session is judged by, one plain line a topic, assumptions marked as such
 */
public record TypedSession(
    Problem problem,
    Session session,
    boolean warmUpTyped,
    boolean coolDownTyped,
    List<String> readAs) {

  public TypedSession {
    readAs = List.copyOf(readAs);
  }
}

package counterset.explain;

import counterset.model.At;
import java.util.List;

/**
 * What one constraint makes of the change from one plan to another.
 *
 * @param constraint its id
 * @param level {@code hard}, {@code medium} or {@code soft}
 * @param points what the other plan has more at that level, never 0; negative for a loss
 * @param places where the matches are that went or came, in order; empty if it is about the whole
 *     session
 * @param sentence what changed, as a coach would say it, without the points
 */
public record Difference(
    String constraint, String level, int points, List<At> places, String sentence) {

  public Difference {
    places = List.copyOf(places);
  }
}

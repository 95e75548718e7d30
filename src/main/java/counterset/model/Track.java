package counterset.model;

import java.util.List;
import java.util.Map;

/**
 * A session as one group of followers does it.
 *
 * @param limitations the ids of the limitations that each of them has; never empty
 * @param modifications what they do instead of an exercise that does not suit them, by its place;
 *     for a unilateral exercise by its first place, and it holds for both sides
 * @param plan their session by itself: the clock, coverage, equipment, cautions and score
 */
public record Track(List<String> limitations, Map<At, Exercise> modifications, Plan plan) {

  public Track {
    limitations = List.copyOf(limitations);
    modifications = Ordered.map(modifications);
  }

  /** The name of the track in files and commands: its limitations, joined by {@code +}. */
  public String name() {
    return String.join("+", limitations);
  }
}

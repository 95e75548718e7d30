package counterset.model;

import java.util.List;
import java.util.Set;

/**
 * A muscle group.
 *
 * @param opposes the groups that move a joint the opposite way; symmetric over a catalogue
 * @param defaultTarget whether naming the region names this group too
 * @param names further words that a coach may use for it
 */
public record Muscle(
    String id,
    String name,
    Region region,
    Aspect aspect,
    Set<String> opposes,
    boolean defaultTarget,
    List<String> names) {

  public Muscle {
    opposes = Ordered.set(opposes);
    names = List.copyOf(names);
  }
}

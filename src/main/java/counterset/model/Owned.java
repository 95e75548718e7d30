package counterset.model;

import java.util.List;
import java.util.Set;

/**
 * Equipment that the client has. In files a list of these is {@code equipment}.
 *
 * @param count how many there are of each mass, at least 1
 * @param kg the masses, where known, in kilograms
 * @param loads the loads that it can serve; all of them unless the coach says otherwise
 */
public record Owned(String id, int count, List<Double> kg, Set<Load> loads) {

  public Owned {
    if (count < 1) {
      throw new IllegalArgumentException(
          "The count (" + count + ") of owned equipment (" + id + ") must be at least 1.");
    }
    kg = kg.stream().sorted().toList();
    loads = Ordered.set(loads);
  }

  /** Whether it serves what an exercise needs of this equipment. */
  public boolean serves(Need need) {
    return need.equipment().equals(id)
        && need.count() <= count
        && need.load().map(loads::contains).orElse(true);
  }
}

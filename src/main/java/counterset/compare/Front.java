package counterset.compare;

import java.util.Comparator;
import java.util.List;

/**
 * The trade-off front of some things (Pareto): those that nothing beats. One beats another if it is
 * at least as good in every aim and better in one.
 *
 * @param aims each gives the better of two things the first place
 */
public record Front<T>(List<Comparator<T>> aims) {

  public Front {
    aims = List.copyOf(aims);
  }

  /** Whether one thing beats another. */
  public boolean beats(T one, T other) {
    return aims.stream().allMatch(aim -> aim.compare(one, other) <= 0)
        && aims.stream().anyMatch(aim -> aim.compare(one, other) < 0);
  }

  /** Those that beat a thing, in their order; empty if it is on the front. */
  public List<T> beating(T thing, List<T> all) {
    return all.stream().filter(other -> beats(other, thing)).toList();
  }
}

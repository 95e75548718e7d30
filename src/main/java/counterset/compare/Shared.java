package counterset.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * How much two plans are alike.
 *
 * @param one the number of the first
 * @param other the number of the second
 * @param exercises that are in both; variants of one exercise count as the same
 * @param ofOne different exercises of the first
 * @param ofOther different exercises of the second
 */
public record Shared(int one, int other, int exercises, int ofOne, int ofOther) {

  /** Every two of those that can be led, in their order. */
  public static List<Shared> of(Comparison comparison) {
    List<Compared> plans = comparison.feasible();
    List<Shared> pairs = new ArrayList<>();
    for (int i = 0; i < plans.size(); i++) {
      for (int j = i + 1; j < plans.size(); j++) {
        pairs.add(of(plans.get(i), plans.get(j)));
      }
    }
    return List.copyOf(pairs);
  }

  static Shared of(Compared one, Compared other) {
    Set<String> here = one.exercises();
    Set<String> there = other.exercises();
    Set<String> both = new HashSet<>(here);
    both.retainAll(there);
    return new Shared(one.number(), other.number(), both.size(), here.size(), there.size());
  }
}

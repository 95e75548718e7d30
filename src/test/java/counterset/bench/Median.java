package counterset.bench;

import java.util.Collection;
import java.util.List;

/** The middle value: of an even number of them the higher of the two in the middle. */
final class Median {

  private Median() {}

  /**
   * The median.
   *
   * @throws IllegalArgumentException if there is no value
   */
  static double of(Collection<Double> values) {
    if (values.isEmpty()) {
      throw new IllegalArgumentException("There is no median of no values.");
    }
    List<Double> sorted = values.stream().sorted().toList();
    return sorted.get(sorted.size() / 2);
  }
}

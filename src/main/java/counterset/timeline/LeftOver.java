package counterset.timeline;

import counterset.model.Changeover;
import counterset.timeline.Changeovers.Step;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Gives left-over seconds to the rests that need them most. */
final class LeftOver {

  /** The seconds by which one rest may grow. */
  static final int MOST_PER_REST = 15;

  private LeftOver() {}

  /**
   * The seconds that each pause gains: rests with the longest changeovers first, the earlier one of
   * two equal ones.
   *
   * @param seconds what is left over; none are given if it is negative
   * @param changeovers one after each step but the last
   */
  static int[] share(int seconds, List<Step> steps, List<Changeover> changeovers) {
    int[] extra = new int[changeovers.size()];
    int[] left = {Math.max(0, seconds)};
    IntStream.range(0, changeovers.size())
        .filter(i -> isRest(steps.get(i), steps.get(i + 1)))
        .boxed()
        .sorted(Comparator.comparingInt((Integer i) -> changeovers.get(i).seconds()).reversed())
        .forEachOrdered(
            i -> {
              extra[i] = Math.min(MOST_PER_REST, left[0]);
              left[0] -= extra[i];
            });
    return extra;
  }

  private static boolean isRest(Step last, Step next) {
    return last.at().superset() != next.at().superset() || last.round() != next.round();
  }
}

package counterset.report.html;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * An axis of a plot, from a little below the least value to a little above the most.
 *
 * @param from where it begins
 * @param to where it ends
 * @param step between its numbers: 1, 2 or 5, times a power of ten, and at least 1
 * @param least of the values; below zero the axis has numbers only if a value is there
 */
record Scale(double from, double to, double step, double least) {

  private static final int MOST_TICKS = 6;

  static Scale of(double... values) {
    double least = Arrays.stream(values).min().orElse(0);
    double most = Arrays.stream(values).max().orElse(0);
    double margin = Math.max(1, (most - least) / 10);
    double from = least - margin;
    double to = most + margin;
    return new Scale(from, to, step(to - from), least);
  }

  private static double step(double span) {
    double power = 1;
    while (true) {
      for (int digit : new int[] {1, 2, 5}) {
        if (span / (digit * power) <= MOST_TICKS) {
          return digit * power;
        }
      }
      power *= 10;
    }
  }

  /** Its numbers. */
  List<Double> ticks() {
    List<Double> ticks = new ArrayList<>();
    double first = least < 0 ? from : Math.max(0, from);
    for (double at = Math.ceil(first / step) * step; at <= to; at += step) {
      ticks.add(at);
    }
    return ticks;
  }

  /** Where a value stands between both ends, 0 to 1. */
  double share(double value) {
    return (value - from) / (to - from);
  }
}

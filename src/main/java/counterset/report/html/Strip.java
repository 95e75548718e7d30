package counterset.report.html;

import counterset.explain.BlockWords;
import counterset.model.English;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Plan;
import counterset.report.Numbers;
import counterset.report.Times;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * The whole session on one line: each interval as wide as it is long.
 *
 * @param id tells the strips of one page apart
 * @param words the same in a sentence, for who cannot see it
 * @param numbers of the supersets, in the middle of each
 * @param ticks minutes
 * @param legend the kinds there are, each with its seconds in all
 */
record Strip(
    String id,
    String words,
    List<Bar> bars,
    List<Mark> numbers,
    List<Mark> ticks,
    List<Line> legend) {

  private static final int[] STEPS = {1, 2, 5, 10, 15, 30, 60, 120, 240};
  private static final int MOST_TICKS = 7;
  private static final int MOST_NUMBERS = 12;

  /** An interval; place and width as a share of the whole, in per cent. */
  record Bar(String kind, String x, String width) {}

  /** A text; its place as a share of the whole, in per cent. */
  record Mark(String x, String text) {}

  static Strip of(Plan plan, String id) {
    int end = Math.max(1, plan.totals().seconds());
    List<Bar> bars =
        plan.timeline().stream()
            .map(it -> new Bar(it.kind().id(), share(it.start(), end), share(it.seconds(), end)))
            .toList();
    List<Line> legend = legend(plan);
    return new Strip(id, words(plan, legend), bars, numbers(plan, end), ticks(end), legend);
  }

  private static String share(double seconds, int end) {
    return Numbers.rounded(100 * seconds / end, 3) + "%";
  }

  private static List<Line> legend(Plan plan) {
    List<Line> legend = new ArrayList<>();
    for (IntervalKind kind : IntervalKind.values()) {
      int seconds =
          plan.timeline().stream()
              .filter(it -> it.kind() == kind)
              .mapToInt(Interval::seconds)
              .sum();
      if (seconds > 0) {
        legend.add(new Line(kind.id(), Names.kind(kind) + " " + Times.clock(seconds)));
      }
    }
    return legend;
  }

  private static String words(Plan plan, List<Line> legend) {
    return "Time strip of "
        + Times.clock(plan.totals().seconds())
        + ": "
        + English.list(legend.stream().map(Line::text).toList())
        + ", in "
        + English.count(plan.totals().supersets(), BlockWords.name(plan))
        + ".";
  }

  private static List<Mark> numbers(Plan plan, int end) {
    TreeMap<Integer, int[]> spans = new TreeMap<>();
    for (Interval interval : plan.timeline()) {
      if (interval.kind() == IntervalKind.WORK) {
        int[] span =
            spans.computeIfAbsent(
                interval.at().orElseThrow().superset(), key -> new int[] {interval.start(), 0});
        span[1] = interval.end();
      }
    }
    int step = (spans.size() + MOST_NUMBERS - 1) / MOST_NUMBERS;
    List<Mark> numbers = new ArrayList<>();
    int count = 0;
    for (var span : spans.entrySet()) {
      if (count++ % Math.max(1, step) == 0) {
        numbers.add(
            new Mark(
                share((span.getValue()[0] + span.getValue()[1]) / 2.0, end),
                String.valueOf(span.getKey())));
      }
    }
    return numbers;
  }

  private static List<Mark> ticks(int end) {
    int step = STEPS[STEPS.length - 1];
    for (int i = STEPS.length - 1; i >= 0 && end / (60.0 * STEPS[i]) < MOST_TICKS; i--) {
      step = STEPS[i];
    }
    List<Mark> ticks = new ArrayList<>();
    // The last one keeps its text within the picture.
    for (int minute = step; 60 * minute <= 0.97 * end; minute += step) {
      ticks.add(new Mark(share(60 * minute, end), minute + " min"));
    }
    return ticks;
  }
}

package counterset.bench;

import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.search.Effort;
import counterset.search.Limit;
import counterset.search.SessionPlanner;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** What a plan of standard effort costs with a larger catalogue and in a longer session. */
final class CostBench {

  private static final int TIMES = 10;
  private static final double CATALOGUE_TARGET = 1.5;
  private static final double MINUTES_TARGET = 4;
  static final List<Integer> MINUTES = List.of(10, 20, 30, 45, 60);

  /**
   * The medians of one problem, in seconds.
   *
   * @param larger with ten times the catalogue
   * @param byMinutes by the length of the session
   */
  record Line(String name, double usual, double larger, Map<Integer, Double> byMinutes) {

    double catalogueRatio() {
      return larger / usual;
    }

    double minutesRatio() {
      return byMinutes.get(MINUTES.get(MINUTES.size() - 1)) / byMinutes.get(MINUTES.get(0));
    }
  }

  private final Catalogue catalogue;
  private final Catalogue large;
  private final Settings settings;
  private final Consumer<String> progress;

  CostBench(Catalogue catalogue, Settings settings, Consumer<String> progress) {
    this.catalogue = catalogue;
    this.large = Copies.times(catalogue, TIMES);
    this.settings = settings;
    this.progress = progress;
  }

  /** Measures the problems of 20 minutes in which nothing is kept, without their tracks. */
  List<Line> measure(List<Shipped> problems) {
    List<Line> lines = new ArrayList<>();
    for (Shipped shipped : problems) {
      if (shipped.problem().minutes() == TargetBench.MINUTES
          && shipped.problem().keep().isEmpty()) {
        progress.accept("cost of " + shipped.name());
        lines.add(measure(shipped.name(), shipped.problem().toBuilder().tracks(List.of()).build()));
      }
    }
    return lines;
  }

  private Line measure(String name, Problem problem) {
    List<Double> usual = new ArrayList<>();
    List<Double> larger = new ArrayList<>();
    Map<Integer, List<Double>> byMinutes = new LinkedHashMap<>();
    MINUTES.forEach(minutes -> byMinutes.put(minutes, new ArrayList<>()));
    for (int turn = 0; turn <= settings.turns(); turn++) {
      boolean counts = turn > 0;
      time(problem, catalogue, counts, usual);
      time(problem, large, counts, larger);
      byMinutes.forEach(
          (minutes, seconds) ->
              time(problem.toBuilder().minutes(minutes).build(), catalogue, counts, seconds));
    }
    Map<Integer, Double> medians = new LinkedHashMap<>();
    byMinutes.forEach((minutes, seconds) -> medians.put(minutes, Median.of(seconds)));
    return new Line(name, Median.of(usual), Median.of(larger), medians);
  }

  private static void time(
      Problem problem, Catalogue catalogue, boolean counts, List<Double> seconds) {
    SessionPlanner planner = new SessionPlanner(catalogue, "bench");
    long start = System.nanoTime();
    planner.plan(problem, Limit.of(Effort.STANDARD));
    if (counts) {
      seconds.add((System.nanoTime() - start) / 1e9);
    }
  }

  Part part(List<Line> lines) {
    List<String> columns = new ArrayList<>(List.of("problem", "usual, s", "10 times, s", "ratio"));
    MINUTES.forEach(minutes -> columns.add(minutes + " min, s"));
    columns.add("ratio");
    return new Part(
        "Cost by size",
        List.of(
            "Seconds of a plan of standard effort, median of "
                + settings.turns()
                + " turns in which all sizes alternate, after one that does not count.",
            "Ten times the catalogue: nine copies of each exercise, as exercises and families of"
                + " their own. The last ratio is that of the longest session to the shortest."),
        columns,
        lines.stream().map(CostBench::cells).toList(),
        rows(lines));
  }

  private static List<String> cells(Line line) {
    List<String> cells = new ArrayList<>();
    cells.add(line.name());
    cells.add(Words.number(line.usual()));
    cells.add(Words.number(line.larger()));
    cells.add(Words.number(line.catalogueRatio()));
    line.byMinutes().values().forEach(seconds -> cells.add(Words.number(seconds)));
    cells.add(Words.number(line.minutesRatio()));
    return cells;
  }

  static List<Row> rows(List<Line> lines) {
    if (lines.isEmpty()) {
      return List.of();
    }
    return List.of(
        row(
            "ten times the catalogue",
            lines.stream().map(Line::catalogueRatio).toList(),
            CATALOGUE_TARGET),
        row(
            "60 minutes instead of 10",
            lines.stream().map(Line::minutesRatio).toList(),
            MINUTES_TARGET));
  }

  /** The target is asked of the median problem. */
  private static Row row(String name, List<Double> ratios, double target) {
    double median = Median.of(ratios);
    double worst = ratios.stream().max(Double::compare).orElseThrow();
    return new Row(
        name,
        Words.number(median) + " times (median; at most " + Words.number(worst) + ")",
        "at most " + target + " times",
        median <= target);
  }
}

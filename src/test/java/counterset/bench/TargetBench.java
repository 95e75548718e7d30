package counterset.bench;

import counterset.cli.ShortRun;
import counterset.model.Catalogue;
import counterset.model.Problem;
import counterset.search.ChanceSession;
import counterset.search.Effort;
import counterset.search.Limit;
import counterset.search.SessionPlanner;
import counterset.search.TimedSearch;
import counterset.search.TimedSearch.Found;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.stream.LongStream;

/** How soon standard effort has nearly the best known score, on the 20-minute problems. */
final class TargetBench {

  static final int MINUTES = 20;

  private static final double TARGET_SECONDS = 0.3;
  private static final int CHANCES = 5;

  private static final List<String> COLUMNS =
      List.of(
          "problem",
          "best known",
          "chance",
          "goal (span)",
          "cold, s",
          "warm, s",
          "reached",
          "goal (number)",
          "cold, s",
          "reached");

  /**
   * The searches of one problem, a list of finds each.
   *
   * @param chance the soft points of a merely allowed session
   */
  record Line(
      String name, Points best, int chance, List<List<Found>> cold, List<List<Found>> warm) {

    Points ofSpan() {
      return Goal.ofSpan(best, chance);
    }

    Points ofNumber() {
      return Goal.ofNumber(best);
    }

    double coldToSpan() {
      return median(cold, ofSpan());
    }
  }

  private final Catalogue catalogue;
  private final Settings settings;
  private final Consumer<String> progress;

  TargetBench(Catalogue catalogue, Settings settings, Consumer<String> progress) {
    this.catalogue = catalogue;
    this.settings = settings;
    this.progress = progress;
  }

  /** Measures each problem of 20 minutes; cold and warm searches alternate. */
  List<Line> measure(List<Shipped> problems, BestKnown known)
      throws IOException, InterruptedException {
    List<Line> lines = new ArrayList<>();
    for (Shipped shipped : problems) {
      if (shipped.problem().minutes() == MINUTES) {
        progress.accept("time to target of " + shipped.name());
        OptionalInt chance = chance(shipped.problem().toBuilder().tracks(List.of()).build());
        if (chance.isPresent()) {
          lines.add(measure(shipped, chance.getAsInt(), known));
        }
      }
    }
    return lines;
  }

  private Line measure(Shipped shipped, int chance, BestKnown known)
      throws IOException, InterruptedException {
    Problem problem = shipped.problem();
    known.add(
        shipped.name(),
        Points.of(
            new SessionPlanner(catalogue, "bench")
                .plan(problem, Limit.of(Effort.THOROUGH))
                .score()));
    List<List<Found>> cold = new ArrayList<>();
    List<List<Found>> warm = new ArrayList<>();
    for (int turn = 0; turn < settings.turns(); turn++) {
      long seed = problem.seed() + turn;
      cold.add(TargetProbe.run(ShortRun.command(settings.target()), shipped.file(), seed));
      warm.add(TimedSearch.run(problem.withSeed(seed), catalogue, Effort.STANDARD));
    }
    cold.stream()
        .flatMap(List::stream)
        .filter(found -> found.hard() == 0)
        .forEach(found -> known.add(shipped.name(), Points.of(found)));
    return new Line(shipped.name(), known.of(shipped.name()), chance, cold, warm);
  }

  private OptionalInt chance(Problem problem) {
    List<Double> soft = new ArrayList<>();
    LongStream.rangeClosed(1, CHANCES)
        .mapToObj(seed -> ChanceSession.soft(problem, catalogue, seed))
        .forEach(found -> found.ifPresent(points -> soft.add((double) points)));
    return soft.isEmpty() ? OptionalInt.empty() : OptionalInt.of((int) Median.of(soft));
  }

  /** The median of the seconds until the goal; infinite if most searches never reach it. */
  static double median(List<List<Found>> searches, Points goal) {
    return Median.of(searches.stream().map(search -> seconds(search, goal)).toList());
  }

  /** Until a session is at least as good; infinite if none is. */
  static double seconds(List<Found> search, Points goal) {
    return search.stream()
        .filter(found -> found.hard() == 0 && Points.of(found).compareTo(goal) >= 0)
        .mapToDouble(found -> found.nanos() / 1e9)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static String reached(List<List<Found>> searches, Points goal) {
    long reached =
        searches.stream().filter(search -> !Double.isInfinite(seconds(search, goal))).count();
    return reached + " of " + searches.size();
  }

  Part part(List<Line> lines) {
    return new Part(
        "Time to target",
        List.of(
            "From the start of the search (before the exercises are filtered) until one of its"
                + " threads has a session that reaches the goal; median of "
                + settings.turns()
                + " seeds. A search tells of what a whole annealing walk found, so that a goal"
                + " reached within a walk counts at its end. Cold: in a Java machine started for it,"
                + " as the program does. Warm: in one that has made plans before.",
            "Best known is the best of this run: thorough effort and all seeds here. Classes are"
                + " solved with their tracks.",
            "Goal (span) is within 1 % of the way from chance to the best known. Chance is a"
                + " complete session that breaks no rule, drawn at random superset by superset"
                + " (median of "
                + CHANCES
                + "), of the main session alone.",
            "Goal (number) is 99 % of the soft points as a number, which have no natural zero; with"
                + " fewer than 100 points that is the best known itself."),
        COLUMNS,
        lines.stream().map(TargetBench::cells).toList(),
        rows(lines));
  }

  private static List<String> cells(Line line) {
    return List.of(
        line.name(),
        line.best().toString(),
        String.valueOf(line.chance()),
        line.ofSpan().toString(),
        Words.number(line.coldToSpan()),
        Words.number(median(line.warm(), line.ofSpan())),
        reached(line.cold(), line.ofSpan()),
        line.ofNumber().toString(),
        Words.number(median(line.cold(), line.ofNumber())),
        reached(line.cold(), line.ofNumber()));
  }

  static List<Row> rows(List<Line> lines) {
    if (lines.isEmpty()) {
      return List.of();
    }
    List<Double> span = lines.stream().map(Line::coldToSpan).toList();
    List<Double> number = lines.stream().map(line -> median(line.cold(), line.ofNumber())).toList();
    List<Double> warm = lines.stream().map(line -> median(line.warm(), line.ofSpan())).toList();
    return List.of(
        row("99 % of the span, cold", span, true),
        row("99 % of the span, warm", warm, false),
        row("99 % as a number, cold", number, true));
  }

  /** The target is asked of the slowest problem. */
  private static Row row(String name, List<Double> seconds, boolean aimed) {
    double worst = seconds.stream().max(Double::compare).orElseThrow();
    long inTime = seconds.stream().filter(each -> each <= TARGET_SECONDS).count();
    return new Row(
        name,
        "median "
            + Words.number(Median.of(seconds))
            + " s, slowest "
            + Words.number(worst)
            + " s, in time on "
            + inTime
            + " of "
            + seconds.size(),
        aimed ? "at most " + TARGET_SECONDS + " s" : "",
        !aimed || worst <= TARGET_SECONDS);
  }
}

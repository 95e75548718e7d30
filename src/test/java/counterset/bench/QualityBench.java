package counterset.bench;

import counterset.bound.ScoreBound;
import counterset.model.Catalogue;
import counterset.model.PlanScore;
import counterset.model.Problem;
import counterset.referee.FullSizeReferee;
import counterset.referee.FullSizeReferee.Judged;
import counterset.referee.Verdict.Status;
import counterset.search.Effort;
import counterset.search.Limit;
import counterset.search.SessionPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.Consumer;

/** Plans of standard effort against the referee and the bounds, problem by problem. */
final class QualityBench {

  /** Standard effort may take this share of the referee's time. */
  private static final double TIME_SHARE = 1.0 / 20;

  private static final List<String> COLUMNS =
      List.of(
          "problem",
          "standard",
          "seconds",
          "thorough",
          "referee",
          "its bound",
          "seconds",
          "time share",
          "limit",
          "gap");

  /** What is known of one problem. */
  record Line(
      String name,
      Points standard,
      double seconds,
      Points thorough,
      Judged judged,
      OptionalInt limit) {

    Points referee() {
      return new Points((int) judged.verdict().medium(), (int) judged.verdict().soft());
    }

    double timeShare() {
      return seconds / judged.seconds();
    }

    boolean isAtLeastAsGood() {
      return standard.compareTo(referee()) >= 0;
    }

    /** The lowest of the bounds that apply; empty if none does. */
    OptionalInt bound() {
      boolean applies = judged.isBounded() && referee().medium() == standard.medium();
      if (!applies) {
        return limit;
      }
      int bound = (int) judged.verdict().softBound();
      return OptionalInt.of(Math.min(bound, limit.orElse(bound)));
    }
  }

  private final Catalogue catalogue;
  private final Settings settings;
  private final Consumer<String> progress;

  QualityBench(Catalogue catalogue, Settings settings, Consumer<String> progress) {
    this.catalogue = catalogue;
    this.settings = settings;
    this.progress = progress;
  }

  /** Measures each problem without its tracks, which the referee does not know. */
  List<Line> measure(List<Shipped> problems) {
    FullSizeReferee referee = new FullSizeReferee(catalogue);
    List<Line> lines = new ArrayList<>();
    for (Shipped shipped : problems) {
      progress.accept("quality of " + shipped.name());
      Problem problem = shipped.problem().toBuilder().tracks(List.of()).build();
      List<Double> seconds = new ArrayList<>();
      PlanScore standard = plan(problem, Effort.STANDARD);
      for (int turn = 0; turn < settings.turns(); turn++) {
        long start = System.nanoTime();
        standard = plan(problem, Effort.STANDARD);
        seconds.add((System.nanoTime() - start) / 1e9);
      }
      PlanScore thorough = plan(problem, Effort.THOROUGH);
      lines.add(
          new Line(
              shipped.name(),
              Points.of(standard),
              Median.of(seconds),
              Points.of(thorough),
              referee.judge(problem, settings.refereeSeconds()),
              ScoreBound.of(problem, catalogue).upperLimit(standard.medium(), standard.soft())));
    }
    return lines;
  }

  private PlanScore plan(Problem problem, Effort effort) {
    return new SessionPlanner(catalogue, "bench").plan(problem, Limit.of(effort)).score();
  }

  Part part(List<Line> lines) {
    return new Part(
        "Quality against the referee",
        List.of(
            "Points are soft ones, or medium / soft where a wish is unmet; every session here breaks"
                + " no rule. Classes are judged without their tracks, which the referee does not"
                + " know.",
            "The referee has "
                + Words.number(settings.refereeSeconds())
                + " s on 2 cores and no hint from the program. Half of them go to models over a few"
                + " dozen exercises at a time, the other half to the model over all of them. The cut"
                + " is in what it looks at first, never in what it is compared on: its sessions are"
                + " sessions of the whole problem, and \"its bound\" comes from the whole model"
                + " alone. Where that would have more than a million fillings on paper there is no"
                + " such bound.",
            "The limit is that of the program's own Lagrangian relaxation, as `plan` prints it. The"
                + " gap is from standard effort to the lower of the two bounds.",
            "Seconds of standard effort are the median of "
                + settings.turns()
                + " plans in a Java machine that has warmed up."),
        COLUMNS,
        lines.stream().map(QualityBench::cells).toList(),
        rows(lines));
  }

  private static List<String> cells(Line line) {
    boolean found = line.judged().hasSession();
    String proven = line.judged().verdict().status() == Status.PROVEN ? " (proved)" : "";
    OptionalInt bound = line.bound();
    return List.of(
        line.name(),
        line.standard().toString(),
        Words.number(line.seconds()),
        line.thorough().toString(),
        found ? line.referee() + proven : "none found",
        line.judged().isBounded() ? String.valueOf(line.judged().verdict().softBound()) : "none",
        Words.number(line.judged().seconds()),
        Words.share(line.timeShare()),
        line.limit().isPresent() ? String.valueOf(line.limit().getAsInt()) : "none",
        bound.isPresent() ? String.valueOf(bound.getAsInt() - line.standard().soft()) : "none");
  }

  static List<Row> rows(List<Line> lines) {
    if (lines.isEmpty()) {
      return List.of();
    }
    List<Line> judged = lines.stream().filter(line -> line.judged().hasSession()).toList();
    long good = judged.stream().filter(Line::isAtLeastAsGood).count();
    double worst = lines.stream().mapToDouble(Line::timeShare).max().orElse(0);
    double median = Median.of(lines.stream().map(Line::timeShare).toList());
    long best = lines.stream().filter(QualityBench::isBestKnown).count();
    return List.of(
        new Row(
            "standard at least as good as the referee",
            String.format(
                Locale.ROOT,
                "%d of %d (none found on %d more)",
                good,
                judged.size(),
                lines.size() - judged.size()),
            "all",
            good == judged.size()),
        new Row(
            "share of the referee's time",
            "median " + Words.share(median) + ", at most " + Words.share(worst),
            "at most " + Words.share(TIME_SHARE),
            worst <= TIME_SHARE),
        new Row("standard finds the best known", best + " of " + lines.size(), "", true));
  }

  private static boolean isBestKnown(Line line) {
    boolean beatsReferee = !line.judged().hasSession() || line.isAtLeastAsGood();
    return beatsReferee && line.standard().compareTo(line.thorough()) >= 0;
  }
}

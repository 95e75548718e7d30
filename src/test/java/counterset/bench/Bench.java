package counterset.bench;

import counterset.catalogue.Catalogues;
import counterset.model.Catalogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The whole benchmark: prints its tables and writes them, with pictures, into {@code bench} in the
 * folder of the packaged program. A target that is missed is reported and fails nothing.
 */
public final class Bench {

  private static final String REPORT = "report.md";

  private final Settings settings;
  private final Path folder;
  private final Path report;

  private Bench(Settings settings) throws IOException {
    this.settings = settings;
    this.folder = Files.createDirectories(settings.target().resolve("bench"));
    this.report = Files.writeString(folder.resolve(REPORT), "# Benchmark\n\n");
  }

  /** Runs all parts; {@link Settings} tells the system properties that shorten it. */
  public static void main(String[] args) throws IOException, InterruptedException {
    System.setProperty("java.awt.headless", "true");
    Bench bench = new Bench(Settings.fromProperties());
    bench.run();
    System.out.println("Written to " + bench.folder + ".");
  }

  private void run() throws IOException, InterruptedException {
    Catalogue catalogue = Catalogues.embedded();
    List<Shipped> problems =
        Shipped.in(Path.of("problems"), catalogue).stream()
            .filter(shipped -> shipped.name().contains(settings.only()))
            .toList();
    BestKnown known = new BestKnown();

    if (settings.parts().contains(Settings.STARTUP)) {
      add(startup());
    }
    if (settings.parts().contains(Settings.QUALITY)) {
      quality(catalogue, problems, known);
    }
    if (settings.parts().contains(Settings.TARGET)) {
      TargetBench target = new TargetBench(catalogue, settings, Bench::tell);
      List<TargetBench.Line> reached = target.measure(problems, known);
      add(target.part(reached));
      drawTarget(reached);
    }
    if (settings.parts().contains(Settings.COST)) {
      CostBench cost = new CostBench(catalogue, settings, Bench::tell);
      List<CostBench.Line> costs = cost.measure(problems);
      add(cost.part(costs));
      drawCost(costs);
    }
    if (settings.parts().contains(Settings.ROSTER)) {
      add(roster());
    }
  }

  /** What is found here without tracks tells the other parts of the problems that have none. */
  private void quality(Catalogue catalogue, List<Shipped> problems, BestKnown known)
      throws IOException {
    QualityBench quality = new QualityBench(catalogue, settings, Bench::tell);
    List<QualityBench.Line> lines = quality.measure(problems);
    Map<String, Shipped> byName = new LinkedHashMap<>();
    problems.forEach(shipped -> byName.put(shipped.name(), shipped));
    for (QualityBench.Line line : lines) {
      if (byName.get(line.name()).problem().tracks().isEmpty()) {
        known.add(line.name(), line.standard().orBetter(line.thorough()));
        if (line.judged().hasSession()) {
          known.add(line.name(), line.referee());
        }
      }
    }
    add(quality.part(lines));
    drawQuality(lines);
  }

  private Part roster() throws IOException, InterruptedException {
    tell("roster");
    return new Part(
        "Roster",
        List.of("Sessions a second of the command batch, start-up included."),
        List.of(),
        List.of(),
        BatchBench.rows(settings.target()));
  }

  private Part startup() throws IOException, InterruptedException {
    tell("start-up");
    return new Part(
        "Start-up",
        List.of(
            "Whole commands beside a Java machine that only prints hello, medians of alternating"
                + " turns; memory is the sum of the peaks of all processes."),
        List.of(),
        List.of(),
        StartupBench.rows(settings.target()));
  }

  /** Prints a part and adds it to the report, so that a run that is broken off leaves something. */
  private void add(Part part) throws IOException {
    String text = Markdown.of(part);
    System.out.println(text);
    Files.writeString(report, Files.readString(report) + text);
  }

  private static void tell(String what) {
    System.out.println("... " + what);
  }

  private void drawQuality(List<QualityBench.Line> lines) throws IOException {
    if (lines.isEmpty()) {
      return;
    }
    List<Double> referee = new ArrayList<>();
    List<Double> bound = new ArrayList<>();
    for (QualityBench.Line line : lines) {
      referee.add(line.judged().hasSession() ? (double) line.referee().soft() : null);
      bound.add(line.bound().isPresent() ? (double) line.bound().getAsInt() : null);
    }
    Map<String, List<Double>> series = new LinkedHashMap<>();
    series.put("standard", lines.stream().map(line -> (double) line.standard().soft()).toList());
    series.put("referee", referee);
    series.put("bound", bound);
    Charts.bars(
        folder.resolve("quality.svg"),
        "Standard effort against the referee",
        "soft points",
        lines.stream().map(QualityBench.Line::name).toList(),
        series);
  }

  /** A search that never got there has no bar. */
  private void drawTarget(List<TargetBench.Line> lines) throws IOException {
    if (lines.isEmpty()) {
      return;
    }
    List<Double> cold = new ArrayList<>();
    List<Double> warm = new ArrayList<>();
    for (TargetBench.Line line : lines) {
      cold.add(finite(line.coldToSpan()));
      warm.add(finite(TargetBench.median(line.warm(), line.ofSpan())));
    }
    Map<String, List<Double>> series = new LinkedHashMap<>();
    series.put("cold", cold);
    series.put("warm", warm);
    Charts.bars(
        folder.resolve("target.svg"),
        "Time to 99 % of the span",
        "seconds",
        lines.stream().map(TargetBench.Line::name).toList(),
        series);
  }

  private static Double finite(double seconds) {
    return Double.isInfinite(seconds) ? null : seconds;
  }

  private void drawCost(List<CostBench.Line> lines) throws IOException {
    if (lines.isEmpty()) {
      return;
    }
    Map<String, List<Double>> series = new LinkedHashMap<>();
    lines.forEach(line -> series.put(line.name(), List.copyOf(line.byMinutes().values())));
    Charts.lines(
        folder.resolve("cost.svg"),
        "A plan of standard effort by the length of the session",
        "minutes of session",
        "seconds",
        CostBench.MINUTES,
        series);
  }
}

package counterset.quality;

import counterset.score.Constraint;
import counterset.score.Constraints;
import counterset.score.Level;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * The table of {@link ReferenceTable} as plain text: the summary first, then request by request.
 */
record TableText(List<TableRow> rows, List<Mapped> references) {

  private static final double SEEN = 0.05;

  /** Something that both sessions of a row have. */
  private record Line(String name, double reference, double plan) {

    double difference() {
      return plan - reference;
    }

    boolean isSeen() {
      return Math.abs(reference) >= SEEN || Math.abs(plan) >= SEEN;
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT, "%-24s %9.1f %9.1f %+9.1f%n", name, reference, plan, difference());
    }
  }

  String text() {
    return "Requests: "
        + rows.size()
        + " of "
        + references.size()
        + "; refused: "
        + references.stream().filter(it -> it.problem().isEmpty()).count()
        + "; supersets left out: "
        + references.stream().mapToInt(Mapped::leftOut).sum()
        + "; stand-ins: "
        + references.stream().mapToInt(it -> it.standIns().size()).sum()
        + "\n\nMean points by constraint, of 16 places; what the plan earns more comes first\n"
        + head("constraint")
        + mean(ids(), id -> row -> row.ofReference(id), id -> row -> row.ofPlan(id))
        + "\nMean features, in 100 places or a session\n"
        + head("feature")
        + features()
        + "\nMean places by movement pattern, in 100\n"
        + head("pattern")
        + patterns()
        + "\n"
        + rows.stream().map(TableText::request).collect(Collectors.joining("\n"));
  }

  private static String head(String first) {
    return String.format(Locale.ROOT, "%-24s %9s %9s %9s%n", first, "reference", "plan", "plan -");
  }

  private static List<String> ids() {
    return Constraints.OF_SESSIONS.stream().map(Constraint::id).toList();
  }

  private String mean(
      List<String> names,
      Function<String, ToDoubleFunction<TableRow>> reference,
      Function<String, ToDoubleFunction<TableRow>> plan) {
    return names.stream()
        .map(it -> new Line(it, mean(reference.apply(it)), mean(plan.apply(it))))
        .filter(Line::isSeen)
        .sorted(Comparator.comparing(it -> -it.difference()))
        .map(Line::toString)
        .collect(Collectors.joining());
  }

  private double mean(ToDoubleFunction<TableRow> of) {
    return rows.stream().mapToDouble(of).average().orElse(0);
  }

  private String features() {
    List<String> names = List.copyOf(Features.of(rows.get(0).plan()).values().keySet());
    return names.stream()
        .map(
            it ->
                new Line(
                    it,
                    mean(row -> Features.of(row.reference()).values().get(it)),
                    mean(row -> Features.of(row.plan()).values().get(it))))
        .map(Line::toString)
        .collect(Collectors.joining());
  }

  private String patterns() {
    Map<String, double[]> shares = new TreeMap<>();
    for (TableRow row : rows) {
      add(shares, row.reference(), 0);
      add(shares, row.plan(), 1);
    }
    return shares.entrySet().stream()
        .map(it -> new Line(it.getKey(), it.getValue()[0], it.getValue()[1]))
        .sorted(Comparator.comparing(it -> -it.difference()))
        .map(Line::toString)
        .collect(Collectors.joining());
  }

  private void add(Map<String, double[]> shares, Judged session, int which) {
    Features.of(session)
        .patterns()
        .forEach(
            (pattern, count) ->
                shares.computeIfAbsent(pattern, key -> new double[2])[which] +=
                    100.0 * count / session.places().size() / rows.size());
  }

  private static String request(TableRow row) {
    String lines =
        ids().stream()
            .map(it -> new Line(it, row.reference().points().of(it), row.plan().points().of(it)))
            .filter(it -> Math.abs(it.difference()) >= SEEN)
            .map(Line::toString)
            .collect(Collectors.joining());
    return row.mapped().reference().number()
        + ". "
        + row.mapped().reference().ask()
        + "\n"
        + session("reference", row.reference())
        + session("plan", row.plan())
        + head("")
        + lines
        + featureLines(row);
  }

  private static String session(String name, Judged session) {
    Judged.Points points = session.points();
    return String.format(
        Locale.ROOT,
        "%s: %d / %d / %d; %s%n  %s%n",
        name,
        points.levels()[Level.HARD.ordinal()],
        points.levels()[Level.MEDIUM.ordinal()],
        points.levels()[Level.SOFT.ordinal()],
        Features.of(session).patternWords(),
        session.places());
  }

  private static String featureLines(TableRow row) {
    Map<String, Double> reference = Features.of(row.reference()).values();
    Map<String, Double> plan = Features.of(row.plan()).values();
    return plan.keySet().stream()
        .map(it -> new Line(it, reference.get(it), plan.get(it)))
        .map(Line::toString)
        .collect(Collectors.joining());
  }
}

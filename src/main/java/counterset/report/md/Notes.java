package counterset.report.md;

import counterset.explain.BlockWords;
import counterset.explain.FaultWords;
import counterset.explain.FetchLine;
import counterset.explain.KindWords;
import counterset.explain.Reasons;
import counterset.explain.TrackWords;
import counterset.explain.WeekWords;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.model.Track;
import counterset.model.WeekPlan;
import counterset.report.Times;
import java.util.List;
import java.util.stream.Stream;

/** Notes on a session: what to fetch, the supersets with their times and reasons, the cautions. */
public final class Notes {

  private final Plan plan;
  private final Catalogue catalogue;
  private final StringBuilder notes = new StringBuilder();

  private Notes(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.catalogue = catalogue;
  }

  /** Notes on one session. */
  public static String of(Plan plan, Catalogue catalogue) {
    return new Notes(plan, catalogue).write("#", plan.problem().title());
  }

  /** Notes on weeks that follow each other, day by day. */
  public static String of(List<WeekPlan> weeks, Catalogue catalogue) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < weeks.size(); i++) {
      String title = weeks.get(i).problem().title();
      String number = weeks.size() == 1 ? "" : ", week " + (i + 1) + " of " + weeks.size();
      all.append(i == 0 ? "" : "\n").append(of(weeks.get(i), title + number, catalogue));
    }
    return all.toString();
  }

  private static String of(WeekPlan week, String title, Catalogue catalogue) {
    StringBuilder all = new StringBuilder("# ").append(Markdown.text(title)).append("\n\n");
    for (int i = 0; i < week.plans().size(); i++) {
      Plan plan = week.plans().get(i);
      String day = WeekWords.day(week.problem().sessions().get(i).day());
      all.append(i == 0 ? "" : "\n")
          .append(
              new Notes(plan, catalogue)
                  .write("##", English.capital(day) + ": " + plan.problem().title()));
    }
    return all.toString();
  }

  private String write(String level, String title) {
    notes.append(level).append(' ').append(Markdown.text(title)).append("\n\n");
    notes
        .append(
            Markdown.text(
                Times.clock(plan.totals().seconds())
                    + " of "
                    + plan.problem().minutes()
                    + ":00 minutes, "
                    + English.count(plan.totals().supersets(), BlockWords.name(plan))
                    + ", score "
                    + plan.score().soft()
                    + "."))
        .append("\n\n");
    List<String> faults =
        plan.matches().stream()
            .filter(FaultWords::isFault)
            .map(match -> fault(match))
            .distinct()
            .toList();
    list(level, "Not as asked", faults);
    list(
        level,
        "Fetch",
        FetchLine.of(plan).stream()
            .map(line -> Stream.of(line.what(), line.where(), line.note()))
            .map(parts -> parts.filter(part -> !part.isBlank()).toList())
            .map(parts -> String.join(", ", parts))
            .toList());
    clock(level);
    supersets(level);
    plan.tracks().forEach(track -> track(level, track));
    list(
        level,
        "Cautions",
        Stream.concat(plan.cautions().stream(), new TrackWords(catalogue).cautions(plan).stream())
            .toList());
    return notes.toString();
  }

  private String fault(Match match) {
    return FaultWords.of(match, plan, catalogue);
  }

  private void list(String level, String title, List<String> lines) {
    if (!lines.isEmpty()) {
      notes.append(level).append("# ").append(title).append("\n\n");
      lines.forEach(line -> notes.append("- ").append(Markdown.text(line)).append('\n'));
      notes.append('\n');
    }
  }

  private void clock(String level) {
    notes.append(level).append("# Order\n\n");
    notes.append(Markdown.head("Time", "Place", "Exercise", "Seconds"));
    for (Interval interval : plan.timeline()) {
      String place = interval.at().map(Object::toString).orElse("");
      boolean work = interval.kind() == IntervalKind.WORK;
      notes.append(
          Markdown.row(
              List.of(
                  Times.clock(interval.start()),
                  work ? place : "",
                  what(interval),
                  Integer.toString(interval.seconds()))));
    }
    notes.append('\n');
  }

  private static String what(Interval interval) {
    String name =
        interval
            .exercise()
            .map(Exercise::name)
            .orElse(English.capital(interval.kind().id().replace('-', ' ')));
    String side =
        interval
            .side()
            .map(
                s ->
                    switch (s) {
                      case BOTH -> "";
                      case LEFT -> ", left side";
                      case RIGHT -> ", right side";
                      case ALTERNATING -> ", sides in turn";
                    })
            .orElse("");
    return name + side;
  }

  private void supersets(String level) {
    Reasons reasons = new Reasons(plan, catalogue);
    KindWords kinds = new KindWords(catalogue);
    String name = English.capital(BlockWords.name(plan));
    for (Superset superset : plan.session().supersets()) {
      list(
          level,
          name + " " + superset.number() + ": " + Markdown.text(kinds.heading(superset)),
          Stream.concat(
                  superset.distinct().stream()
                      .map(e -> e.name() + ": " + e.setup() + " " + String.join(" ", e.cues())),
                  reasons.of(superset).stream())
              .toList());
    }
  }

  private void track(String level, Track track) {
    list(
        level,
        "Instead, with " + Markdown.text(new TrackWords(catalogue).of(track)),
        track.modifications().entrySet().stream()
            .map(entry -> entry.getKey() + ": " + entry.getValue().name())
            .toList());
  }
}

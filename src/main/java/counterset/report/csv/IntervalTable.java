package counterset.report.csv;

import counterset.explain.Announcement;
import counterset.explain.Announcements;
import counterset.explain.ItemWords;
import counterset.explain.Items;
import counterset.explain.Modifications;
import counterset.explain.TrackWords;
import counterset.explain.WeekWords;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.Plan;
import counterset.model.Side;
import counterset.model.WeekPlan;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The intervals of a session as rows. */
public final class IntervalTable {

  private static final List<String> COLUMNS =
      List.of(
          "start",
          "end",
          "seconds",
          "kind",
          "superset",
          "position",
          "round",
          "exercise",
          "name",
          "side",
          "equipment",
          "say",
          "modifications");

  private IntervalTable() {}

  /** One session, its column names first. */
  public static String of(Plan plan, Catalogue catalogue) {
    return text(COLUMNS, rows(plan, catalogue));
  }

  /** Weeks, with columns for the number of the week and the day before the others. */
  public static String of(List<WeekPlan> weeks, Catalogue catalogue) {
    List<List<String>> rows = new ArrayList<>();
    for (int week = 0; week < weeks.size(); week++) {
      WeekPlan planned = weeks.get(week);
      for (int i = 0; i < planned.plans().size(); i++) {
        String day = WeekWords.day(planned.problem().sessions().get(i).day());
        List<String> when = List.of(Integer.toString(week + 1), day);
        rows(planned.plans().get(i), catalogue).forEach(row -> rows.add(joined(when, row)));
      }
    }
    return text(joined(List.of("week", "day"), COLUMNS), rows);
  }

  private static List<String> joined(List<String> first, List<String> second) {
    return Stream.concat(first.stream(), second.stream()).toList();
  }

  private static String text(List<String> columns, List<List<String>> rows) {
    StringWriter text = new StringWriter();
    try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
      writer.writeRecord(columns);
      rows.forEach(row -> writer.writeRecord(row.stream().map(Cells::safe).toList()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static List<List<String>> rows(Plan plan, Catalogue catalogue) {
    ItemWords items = new ItemWords(plan.problem());
    return Announcements.of(plan, catalogue).stream()
        .map(announcement -> row(announcement, plan, catalogue, items))
        .toList();
  }

  private static List<String> row(
      Announcement announcement, Plan plan, Catalogue catalogue, ItemWords items) {
    Interval interval = announcement.interval();
    TrackWords tracks = new TrackWords(catalogue);
    Optional<At> at = interval.at();
    Optional<Exercise> exercise = interval.exercise();
    return List.of(
        Integer.toString(interval.start()),
        Integer.toString(interval.end()),
        Integer.toString(interval.seconds()),
        interval.kind().id(),
        at.map(place -> Integer.toString(place.superset())).orElse(""),
        at.map(At::letter).orElse(""),
        interval.round().isPresent() ? Integer.toString(interval.round().getAsInt()) : "",
        exercise.map(Exercise::id).orElse(""),
        exercise.map(Exercise::name).orElse(""),
        interval.side().map(Side::id).orElse(""),
        exercise
            .map(
                done ->
                    Items.of(done, catalogue).stream()
                        .map(items::written)
                        .collect(Collectors.joining("; ")))
            .orElse(""),
        announcement.text(),
        new Modifications(plan)
            .of(interval).stream()
                .map(shown -> tracks.of(shown.track()) + ": " + shown.exercise().name())
                .collect(Collectors.joining("; ")));
  }
}

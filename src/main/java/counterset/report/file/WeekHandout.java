package counterset.report.file;

import counterset.model.Catalogue;
import counterset.model.WeekPlan;
import counterset.problem.WeekJson;
import counterset.report.csv.IntervalTable;
import counterset.report.html.Pictures;
import counterset.report.html.WeekPage;
import counterset.report.ics.CalendarFile;
import counterset.report.json.WeekPlanJson;
import counterset.report.md.Notes;
import counterset.report.text.Detail;
import counterset.report.text.WeekSheet;
import counterset.training.LoadAdvice;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Planned weeks to be handed out: as a whole, or session by session.
 *
 * @param weeks one, or those of a block in their order
 * @param loads advice on loads by session, for a single week; empty if no journal was read
 * @param monday of the first week, if it is known
 * @param start when each session begins, if it is known
 * @param pictures of the exercises, for pages
 * @param detail of the run sheets
 */
public record WeekHandout(
    List<WeekPlan> weeks,
    List<List<LoadAdvice>> loads,
    Catalogue catalogue,
    Optional<LocalDate> monday,
    Optional<LocalTime> start,
    Pictures pictures,
    Detail detail) {

  /** The kinds of file that a week, or a block, can be written to as a whole. */
  public static final Kinds<WeekHandout> KINDS =
      new Kinds<WeekHandout>()
          .with(".txt", it -> it.text(false))
          .with(".json", WeekHandout::json)
          .with(".html", it -> WeekPage.of(it.weeks, it.catalogue, it.pictures))
          .with(".ics", it -> CalendarFile.of(it.weeks, it.monday.orElseThrow(), it.start))
          .with(".csv", it -> IntervalTable.of(it.weeks, it.catalogue))
          .with(".md", it -> Notes.of(it.weeks, it.catalogue));

  /** The texts of a folder with some files for each session, such as {@code monday.txt}. */
  public Map<Path, String> sessions(Path folder) {
    Map<Path, String> texts = new LinkedHashMap<>();
    for (int week = 0; week < weeks.size(); week++) {
      String prefix = weeks.size() == 1 ? "" : "week-" + (week + 1) + "-";
      WeekPlan plan = weeks.get(week);
      for (int i = 0; i < plan.plans().size(); i++) {
        String name = prefix + WeekJson.id(plan.problem().sessions().get(i).day());
        List<LoadAdvice> advice = loads.isEmpty() ? List.of() : loads.get(i);
        Handout session =
            new Handout(
                plan.plans().get(i), catalogue, advice, Optional.empty(), start, pictures, detail);
        for (String ending : Handout.IN_A_FOLDER) {
          texts.put(folder.resolve(name + ending), Handout.KINDS.render(ending, session));
        }
      }
    }
    return texts;
  }

  /** The week, or the block, as JSON. */
  public String json() {
    return weeks.size() == 1
        ? WeekPlanJson.text(weeks.get(0), catalogue, loads)
        : WeekPlanJson.block(weeks, catalogue);
  }

  /** The week, or the block, as text. */
  public String text(boolean colour) {
    return weeks.size() == 1
        ? WeekSheet.of(weeks.get(0), catalogue, colour, detail, loads)
        : WeekSheet.block(weeks, catalogue, colour, detail);
  }
}

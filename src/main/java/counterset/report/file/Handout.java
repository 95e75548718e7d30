package counterset.report.file;

import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.report.csv.IntervalTable;
import counterset.report.html.Pictures;
import counterset.report.html.SessionPage;
import counterset.report.ics.CalendarFile;
import counterset.report.json.LoadJson;
import counterset.report.json.PlanJson;
import counterset.report.md.Notes;
import counterset.report.text.Detail;
import counterset.report.text.RunSheet;
import counterset.report.vtt.Captions;
import counterset.report.vtt.Chapters;
import counterset.training.LoadAdvice;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * A plan to be handed out.
 *
 * @param loads advice on loads; empty if no journal was read
 * @param day of the session, if it is known
 * @param start when the session begins, if it is known
 * @param pictures of the exercises, for pages
 * @param detail of the run sheet
 */
public record Handout(
    Plan plan,
    Catalogue catalogue,
    List<LoadAdvice> loads,
    Optional<LocalDate> day,
    Optional<LocalTime> start,
    Pictures pictures,
    Detail detail) {

  /** The kinds of file that a plan can be written to. */
  public static final Kinds<Handout> KINDS =
      new Kinds<Handout>()
          .with(".txt", it -> it.text(false))
          .with(".json", Handout::json)
          .with(".html", it -> SessionPage.of(it.plan, it.catalogue, it.pictures))
          .with(".chapters.vtt", it -> Chapters.of(it.plan))
          .with(".vtt", it -> Captions.of(it.plan, it.catalogue))
          .with(".ics", it -> CalendarFile.of(it.plan, it.day.orElseThrow(), it.start))
          .with(".csv", it -> IntervalTable.of(it.plan, it.catalogue))
          .with(".md", it -> Notes.of(it.plan, it.catalogue));

  /** Those that one file of a folder of plans is made of. */
  static final List<String> IN_A_FOLDER = List.of(".txt", ".json", ".html");

  /** A plan of which no more is known than it says itself. */
  public Handout(Plan plan, Catalogue catalogue, Pictures pictures, Detail detail) {
    this(plan, catalogue, List.of(), plan.problem().date(), Optional.empty(), pictures, detail);
  }

  /** Whether a program reads the file again, as {@code check} does. */
  public static boolean isReadAgain(String file) {
    return KINDS.isOf(file, ".json");
  }

  /** Whether a file says on which day the session is, so that the day must be known. */
  public static boolean isDated(String file) {
    return KINDS.isOf(file, ".ics");
  }

  /** The run sheet. */
  public String text(boolean colour) {
    return RunSheet.of(plan, catalogue, colour, detail, loads);
  }

  /** The plan file. */
  public String json() {
    return loads.isEmpty() ? PlanJson.text(plan, catalogue) : LoadJson.plan(plan, catalogue, loads);
  }
}

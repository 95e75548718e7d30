package counterset.report.text;

import counterset.explain.TrackWords;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.training.LoadAdvice;
import java.util.List;

/**
 * The run sheet: what to fetch, the order, the session by the second, and what the plan is worth.
 */
public final class RunSheet {

  private RunSheet() {}

  /**
   * A run sheet of lines of at most 100 columns.
   *
   * @param colour whether to make some lines stand out on a terminal; the words are the same
   *     without
   */
  public static String of(Plan plan, Catalogue catalogue, boolean colour, Detail detail) {
    return of(plan, catalogue, colour, detail, List.of());
  }

  /** The same with advice on loads, if there is any. */
  public static String of(
      Plan plan, Catalogue catalogue, boolean colour, Detail detail, List<LoadAdvice> loads) {
    Page page = new Page(colour);
    HeadPart.write(page, plan, catalogue);
    FetchPart.write(page, plan, catalogue);
    LoadPart.write(page, loads, catalogue);
    OrderPart.write(page, plan);
    new ClockPart(page, plan, catalogue, detail).write();
    if (detail.isFull()) {
      WorthPart.write(page, plan, catalogue);
    } else {
      WorthPart.brief(page, plan, catalogue);
    }
    page.blank();
    page.strong("", "CAUTIONS");
    plan.cautions().forEach(caution -> page.plain("  - ", caution));
    new TrackWords(catalogue).cautions(plan).forEach(caution -> page.plain("  - ", caution));
    return page.text();
  }
}

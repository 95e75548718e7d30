package counterset.report.text;

import counterset.explain.WeekWords;
import counterset.model.Catalogue;
import counterset.model.WeekPlan;
import counterset.training.LoadAdvice;
import java.util.List;
import java.util.Locale;

/** A planned week: at a glance first, then the run sheet of each session. */
public final class WeekSheet {

  private WeekSheet() {}

  /**
   * Lines of at most 100 columns.
   *
   * @param colour whether to make some lines stand out on a terminal
   * @param loads advice on loads by session; empty if no journal was read
   */
  public static String of(
      WeekPlan week,
      Catalogue catalogue,
      boolean colour,
      Detail detail,
      List<List<LoadAdvice>> loads) {
    StringBuilder text = new StringBuilder(glance(week, catalogue, colour));
    for (int i = 0; i < week.plans().size(); i++) {
      Page page = new Page(colour);
      page.blank();
      page.strong("", "=".repeat(Page.WIDTH));
      page.strong(
          "",
          WeekWords.day(week.problem().sessions().get(i).day()).toUpperCase(Locale.ROOT)
              + ", session "
              + (i + 1)
              + " of "
              + week.plans().size());
      page.blank();
      text.append(page.text())
          .append(
              RunSheet.of(
                  week.plans().get(i),
                  catalogue,
                  colour,
                  detail,
                  loads.isEmpty() ? List.of() : loads.get(i)));
    }
    return text.toString();
  }

  /** Several weeks, one after the other. */
  public static String block(
      List<WeekPlan> weeks, Catalogue catalogue, boolean colour, Detail detail) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < weeks.size(); i++) {
      Page page = new Page(colour);
      if (i > 0) {
        page.blank();
      }
      page.strong("", "#".repeat(Page.WIDTH));
      page.strong("", "WEEK " + (i + 1) + " OF " + weeks.size());
      page.blank();
      text.append(page.text()).append(of(weeks.get(i), catalogue, colour, detail, List.of()));
    }
    return text.toString();
  }

  private static String glance(WeekPlan week, Catalogue catalogue, boolean colour) {
    Page page = new Page(colour);
    WeekGlance.write(page, week, catalogue);
    return page.text();
  }
}

package counterset.report.html;

import counterset.model.Catalogue;
import counterset.model.WeekPlan;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A planned week, or several, as a page: the days at a glance, the muscle groups by days, and the
 * run sheet of each day.
 */
public final class WeekPage {

  private final String title;
  private final List<WeekView> weeks;

  private WeekPage(String title, List<WeekView> weeks) {
    this.title = title;
    this.weeks = weeks;
  }

  /** A week without pictures of the exercises, as the text of an HTML file. */
  public static String of(WeekPlan week, Catalogue catalogue) {
    return of(List.of(week), catalogue, Pictures.NONE);
  }

  /**
   * The weeks of a block, as the text of an HTML file.
   *
   * @param weeks in their order; at least one
   */
  public static String of(List<WeekPlan> weeks, Catalogue catalogue, Pictures pictures) {
    boolean one = weeks.size() == 1;
    List<WeekView> views =
        IntStream.range(0, weeks.size())
            .mapToObj(
                i ->
                    WeekView.of(
                        weeks.get(i),
                        catalogue,
                        pictures,
                        one ? "" : "week-" + (i + 1) + "-",
                        one ? "" : "Week " + (i + 1) + " of " + weeks.size()))
            .toList();
    WeekPage page = new WeekPage(weeks.get(0).problem().title(), views);
    return new Document(
            page.title,
            Resource.all("colours.css", "page.css", "sheet.css", "week.css", "print.css")
                + pictures.styles(),
            Script.of("theme.js", "start-week.js"),
            Template.fill("week-page", page))
        .text();
  }

  String title() {
    return title;
  }

  List<WeekView> weeks() {
    return weeks;
  }
}

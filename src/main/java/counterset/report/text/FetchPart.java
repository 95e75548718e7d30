package counterset.report.text;

import counterset.explain.FetchLine;
import counterset.model.Catalogue;
import counterset.model.Plan;
import java.util.List;
import java.util.Locale;

/** What to fetch before the start. */
final class FetchPart {

  private FetchPart() {}

  static void write(Page page, Plan plan, Catalogue catalogue) {
    List<FetchLine> lines = FetchLine.of(plan);
    page.blank();
    page.strong("", lines.isEmpty() ? "FETCH nothing" : "FETCH");
    int what = lines.stream().mapToInt(line -> line.what().length()).max().orElse(0);
    int where = lines.stream().mapToInt(line -> line.where().length()).max().orElse(0);
    for (FetchLine line : lines) {
      String format = "%-" + Math.max(1, what) + "s   %-" + Math.max(1, where) + "s   %s";
      page.plain("  ", String.format(Locale.ROOT, format, line.what(), line.where(), line.note()));
    }
    TrackPart.fetch(page, plan, catalogue);
  }
}

package counterset.report.text;

import counterset.model.Catalogue;
import counterset.model.Plan;

/** What a plan covers and what its score is made of, as the run sheet shows it. */
public final class ScoreTable {

  private ScoreTable() {}

  /** Lines of at most 100 columns. */
  public static String of(Plan plan, Catalogue catalogue, boolean colour) {
    Page page = new Page(colour);
    WorthPart.write(page, plan, catalogue);
    return page.text();
  }
}

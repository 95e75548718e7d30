package counterset.report.html;

import counterset.explain.FetchLine;
import counterset.explain.TrackWords;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.Track;
import counterset.report.Times;
import java.util.ArrayList;
import java.util.List;

/**
 * All that a page shows of one session.
 *
 * @param id goes before the ids of its parts, so that a page can show several sessions
 * @param level of its headings, 1 being that of the page
 * @param fetchMore what only the followers of a track need
 * @param end when it ends and what is left of the cap
 */
record SessionView(
    String id,
    int level,
    Head head,
    Strip strip,
    List<FetchLine> fetch,
    List<Line> fetchMore,
    List<Block> blocks,
    String end,
    List<Coverage> coverage,
    Worth worth,
    List<String> cautions) {

  /** The only session of a page. */
  static SessionView of(Plan plan, Catalogue catalogue, Pictures pictures) {
    return of(plan, catalogue, pictures, "", 2);
  }

  /** One of the sessions of a week. */
  static SessionView inWeek(Plan plan, Catalogue catalogue, Pictures pictures, String id) {
    return of(plan, catalogue, pictures, id, 3);
  }

  private static SessionView of(
      Plan plan, Catalogue catalogue, Pictures pictures, String id, int level) {
    List<String> cautions = new ArrayList<>(plan.cautions());
    cautions.addAll(new TrackWords(catalogue).cautions(plan));
    return new SessionView(
        id,
        level,
        Head.of(plan, catalogue),
        Strip.of(plan, id),
        FetchLine.of(plan),
        fetchMore(plan, catalogue),
        Sheet.of(plan, catalogue, pictures),
        end(plan),
        Coverage.of(plan, catalogue),
        Worth.of(plan),
        cautions);
  }

  /** The level of the headings below its headings. */
  int deeper() {
    return level + 1;
  }

  /** Whether nothing has to be fetched by anyone. */
  boolean fetchesNothing() {
    return fetch.isEmpty() && fetchMore.isEmpty();
  }

  private static List<Line> fetchMore(Plan plan, Catalogue catalogue) {
    TrackWords words = new TrackWords(catalogue);
    List<Line> lines = new ArrayList<>();
    for (Track track : plan.tracks()) {
      for (FetchLine line : FetchLine.more(plan, track)) {
        lines.add(new Line("For " + words.of(track), line.what() + ", " + line.where()));
      }
    }
    return lines;
  }

  private static String end(Plan plan) {
    int unused = plan.totals().unusedSeconds();
    return Times.clock(plan.totals().seconds())
        + " End, "
        + (unused < 0 ? -unused + " s over the cap" : unused + " s of the cap unused");
  }
}

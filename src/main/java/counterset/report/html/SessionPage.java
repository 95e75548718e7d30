package counterset.report.html;

import counterset.model.Catalogue;
import counterset.model.Plan;
import java.util.List;

/** One session as a page: the run sheet, to be printed too, and a clock to lead or film by. */
public final class SessionPage {

  private final SessionView session;
  private final String data;
  private final List<Picture> pictures;

  private SessionPage(SessionView session, String data, List<Picture> pictures) {
    this.session = session;
    this.data = data;
    this.pictures = pictures;
  }

  /** The page without pictures of the exercises, as the text of an HTML file. */
  public static String of(Plan plan, Catalogue catalogue) {
    return of(plan, catalogue, Pictures.NONE);
  }

  /** The page, as the text of an HTML file. */
  public static String of(Plan plan, Catalogue catalogue, Pictures pictures) {
    SessionPage page =
        new SessionPage(
            SessionView.of(plan, catalogue, pictures),
            ClockData.of(plan, catalogue),
            Picture.of(plan, pictures));
    return new Document(
            plan.problem().title(),
            Resource.all("colours.css", "page.css", "sheet.css", "clock.css", "print.css")
                + pictures.styles(),
            Script.of(
                "theme.js",
                "time.js",
                "tracks.js",
                "sound.js",
                "screen.js",
                "words.js",
                "view.js",
                "clock.js",
                "start.js"),
            Template.fill("session-page", page))
        .text();
  }

  SessionView session() {
    return session;
  }

  /** What the clock runs by: JSON that cannot end the element it stands in. */
  String data() {
    return data;
  }

  List<Picture> pictures() {
    return pictures;
  }
}

package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.Interval;
import counterset.model.Plan;
import java.util.ArrayList;
import java.util.List;

/** What the coach says, interval by interval. */
public final class Announcements {

  private Announcements() {}

  /** One announcement for each interval of the timeline, in order. */
  public static List<Announcement> of(Plan plan, Catalogue catalogue) {
    Course course = new Course(plan, catalogue);
    NextWords next = new NextWords(plan, catalogue, course);
    WorkWords work = new WorkWords(plan, catalogue, course);
    MoveWords moves = new MoveWords(plan, catalogue, course, next);
    RestWords rest = new RestWords(plan, next);
    List<Announcement> announcements = new ArrayList<>();
    for (Interval interval : plan.timeline()) {
      List<String> sentences = new ArrayList<>();
      boolean first = announcements.isEmpty();
      if (first) {
        sentences.addAll(OpeningWords.of(plan));
      }
      sentences.addAll(
          switch (interval.kind()) {
            case GET_READY -> moves.before(interval);
            case WARM_UP -> moves.warmUp(interval);
            case WORK -> work.of(interval);
            case SWITCH -> rest.between(interval);
            case REST -> rest.of(interval);
            case COOL_DOWN -> moves.coolDown(interval);
          });
      if (interval.end() == plan.totals().seconds()) {
        sentences.add("That is the session. Well done.");
      }
      announcements.add(new Announcement(interval, sentences));
    }
    return announcements;
  }
}

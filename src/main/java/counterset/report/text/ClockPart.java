package counterset.report.text;

import counterset.explain.Announcement;
import counterset.explain.Announcements;
import counterset.explain.Course;
import counterset.explain.HandlingWords;
import counterset.model.Catalogue;
import counterset.model.Changeover;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Plan;
import counterset.report.Times;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The session by the second. */
final class ClockPart {

  private final Detail detail;
  private final Page page;
  private final Plan plan;
  private final Course course;
  private final HandlingWords handling;
  private final WorkPart work;
  private final List<Announcement> announcements;

  ClockPart(Page page, Plan plan, Catalogue catalogue, Detail detail) {
    this.detail = detail;
    this.page = page;
    this.plan = plan;
    this.course = new Course(plan, catalogue);
    this.handling = new HandlingWords(plan.problem(), catalogue);
    this.work = new WorkPart(page, plan, catalogue, course, detail);
    this.announcements = Announcements.of(plan, catalogue);
  }

  void write() {
    Optional<IntervalKind> last = Optional.empty();
    for (Announcement announcement : announcements) {
      Interval interval = announcement.interval();
      switch (interval.kind()) {
        case GET_READY, WARM_UP, COOL_DOWN -> {
          heading(interval, last);
          String lead =
              String.format(
                  Locale.ROOT, "%6s  %3d s  ", Times.clock(interval.start()), interval.seconds());
          page.plain(lead, announcement.text());
        }
        case WORK -> work.write(interval);
        case SWITCH -> pause(announcement, "SWITCH", 0);
        case REST ->
            pause(announcement, "REST", interval.seconds() - plan.problem().clock().rest());
      }
      last = Optional.of(interval.kind());
    }
    page.blank();
    int unused = plan.totals().unusedSeconds();
    String left = unused < 0 ? -unused + " s over the cap" : unused + " s of the cap unused";
    page.strong(
        String.format(Locale.ROOT, "%6s  ", Times.clock(plan.totals().seconds())), "END, " + left);
  }

  private void heading(Interval interval, Optional<IntervalKind> last) {
    if (last.equals(Optional.of(interval.kind()))) {
      return;
    }
    int seconds =
        plan.timeline().stream()
            .filter(other -> other.kind() == interval.kind())
            .mapToInt(Interval::seconds)
            .sum();
    String name = interval.kind().id().replace('-', ' ').toUpperCase(Locale.ROOT);
    page.blank();
    page.strong(
        "",
        name.replace("WARM UP", "WARM-UP").replace("COOL DOWN", "COOL-DOWN")
            + "  "
            + Times.clock(seconds));
  }

  private void pause(Announcement announcement, String name, int leftOver) {
    Interval pause = announcement.interval();
    Optional<Changeover> changeover = course.changeoverIn(pause);
    String more = leftOver > 0 ? " (" + leftOver + " s of them left over)" : "";
    String effort =
        changeover
            .filter(c -> c.seconds() > 0)
            .map(c -> "changeover " + c.seconds() + " s of " + c.available() + " s")
            .orElse("nothing to change");
    page.strong(
        String.format(Locale.ROOT, "%6s  ", Times.clock(pause.start())),
        name + " " + pause.seconds() + " s" + more + "   " + effort);
    List<String> tasks = changeover.map(handling::sentences).orElse(List.of());
    if (!tasks.isEmpty()) {
      page.plain("        Do     ", String.join(" ", tasks));
    }
    if (!detail.isFull()) {
      return;
    }
    List<String> said = new ArrayList<>(announcement.sentences());
    said.removeAll(tasks);
    if (pause.kind() == IntervalKind.REST || !tasks.isEmpty()) {
      page.plain("        Say    ", String.join(" ", said));
    }
  }
}

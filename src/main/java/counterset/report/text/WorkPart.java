package counterset.report.text;

import counterset.explain.BlockWords;
import counterset.explain.Course;
import counterset.explain.HandlingWords;
import counterset.explain.ItemWords;
import counterset.explain.Items;
import counterset.explain.KindWords;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Item;
import counterset.model.Plan;
import counterset.model.Side;
import counterset.model.Superset;
import counterset.report.Times;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A superset: its heading, and each exercise with its equipment, its set-up and its first cue; in
 * full all its cues and what to watch for.
 */
final class WorkPart {

  private static final String DETAIL = "           ";

  private final Detail detail;
  private final Page page;
  private final Plan plan;
  private final Catalogue catalogue;
  private final Course course;
  private final ItemWords items;
  private final KindWords kinds;
  private final HandlingWords handling;
  private final ShowPart show;
  private final Set<String> explained = new HashSet<>();
  private int superset;

  WorkPart(Page page, Plan plan, Catalogue catalogue, Course course, Detail detail) {
    this.detail = detail;
    this.page = page;
    this.plan = plan;
    this.catalogue = catalogue;
    this.course = course;
    this.items = new ItemWords(plan.problem());
    this.kinds = new KindWords(catalogue);
    this.handling = new HandlingWords(plan.problem(), catalogue);
    this.show = new ShowPart(page, plan, catalogue);
  }

  void write(Interval work) {
    At at = work.at().orElseThrow();
    if (at.superset() != superset) {
      superset = at.superset();
      heading(work);
    } else if (at.position() == 0 && work.round().isPresent()) {
      page.plain("        ", round(work));
    }
    Exercise exercise = work.exercise().orElseThrow();
    boolean first = explained.add(exercise.id());
    exercise(work, exercise);
    if (isUnpaused(work)) {
      course
          .changeoverInto(work)
          .map(handling::sentences)
          .filter(tasks -> !tasks.isEmpty())
          .ifPresent(tasks -> page.plain(DETAIL + "Do     ", String.join(" ", tasks)));
    }
    if (first) {
      page.plain(DETAIL + "Set up ", exercise.setup());
      detail("Cue    ", detail.isFull() ? exercise.cues() : exercise.cues().subList(0, 1));
      if (detail.isFull()) {
        detail("Watch  ", exercise.faults().stream().limit(1).toList());
      }
    }
    show.write(work, DETAIL);
  }

  private boolean isUnpaused(Interval work) {
    return course.lastWork(work).filter(last -> last.end() == work.start()).isPresent();
  }

  private void detail(String name, List<String> sentences) {
    if (!sentences.isEmpty()) {
      page.faint(DETAIL + name, String.join(" ", sentences));
    }
  }

  private void heading(Interval work) {
    Superset current =
        plan.session().supersets().stream()
            .filter(s -> s.number() == superset)
            .findFirst()
            .orElseThrow();
    int end =
        plan.timeline().stream()
            .filter(interval -> interval.kind() == IntervalKind.WORK)
            .filter(interval -> interval.at().orElseThrow().superset() == superset)
            .mapToInt(Interval::end)
            .max()
            .orElseThrow();
    String block = BlockWords.name(plan).toUpperCase(Locale.ROOT);
    page.blank();
    page.strong(
        "",
        Times.clock(work.start())
            + " - "
            + Times.clock(end)
            + "  "
            + block
            + " "
            + superset
            + " of "
            + plan.session().supersets().size()
            + ": "
            + kinds.heading(current));
    if (work.round().isPresent()) {
      page.plain("        ", round(work));
    }
  }

  private String round(Interval work) {
    return "Round " + work.round().getAsInt() + " of " + plan.problem().clock().rounds();
  }

  private void exercise(Interval work, Exercise exercise) {
    String name =
        exercise.name()
            + switch (work.side().orElse(Side.BOTH)) {
              case BOTH -> "";
              case LEFT -> ", left side";
              case RIGHT -> ", right side, same again";
              case ALTERNATING -> ", sides in turn";
            };
    String lead =
        String.format(
            Locale.ROOT, "%6s  %s  ", Times.clock(work.start()), work.at().orElseThrow().letter());
    String with = work.side().equals(Optional.of(Side.RIGHT)) ? "" : equipment(work, exercise);
    String line = String.format(Locale.ROOT, "%-46s  %s", name, with);
    if (lead.length() + line.length() <= Page.WIDTH) {
      page.strong(lead, line);
    } else {
      page.strong(lead, name);
      page.strong(DETAIL + "With   ", with);
    }
  }

  private String equipment(Interval work, Exercise exercise) {
    List<Item> needs = Items.of(exercise, catalogue);
    List<String> words = new ArrayList<>(needs.stream().map(items::written).toList());
    for (Item item : course.inUse(work)) {
      if (!needs.contains(item)) {
        words.add(items.said(item) + " still on");
      }
    }
    return String.join(", ", words);
  }
}

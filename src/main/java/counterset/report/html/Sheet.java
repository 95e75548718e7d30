package counterset.report.html;

import counterset.explain.Announcement;
import counterset.explain.Announcements;
import counterset.explain.BlockWords;
import counterset.explain.Course;
import counterset.explain.HandlingWords;
import counterset.explain.ItemWords;
import counterset.explain.Items;
import counterset.explain.KindWords;
import counterset.model.Catalogue;
import counterset.model.Changeover;
import counterset.model.English;
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
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** The run sheet: the session by the second. */
final class Sheet {

  private final Plan plan;
  private final Catalogue catalogue;
  private final Pictures pictures;
  private final Course course;
  private final HandlingWords handling;
  private final ItemWords items;
  private final KindWords kinds;
  private final Shows shows;
  private final Set<String> explained = new HashSet<>();
  private final List<Block> blocks = new ArrayList<>();

  private Sheet(Plan plan, Catalogue catalogue, Pictures pictures) {
    this.plan = plan;
    this.catalogue = catalogue;
    this.pictures = pictures;
    this.course = new Course(plan, catalogue);
    this.handling = new HandlingWords(plan.problem(), catalogue);
    this.items = new ItemWords(plan.problem());
    this.kinds = new KindWords(catalogue);
    this.shows = new Shows(plan, catalogue);
  }

  static List<Block> of(Plan plan, Catalogue catalogue, Pictures pictures) {
    Sheet sheet = new Sheet(plan, catalogue, pictures);
    Optional<Interval> last = Optional.empty();
    for (Announcement announcement : Announcements.of(plan, catalogue)) {
      Interval interval = announcement.interval();
      if (sheet.begins(interval, last)) {
        sheet.blocks.add(sheet.block(interval));
      }
      sheet.blocks.get(sheet.blocks.size() - 1).rows().add(sheet.row(announcement));
      last = Optional.of(interval);
    }
    return sheet.blocks;
  }

  /** A pause belongs to the work before it. */
  private boolean begins(Interval interval, Optional<Interval> last) {
    if (last.isEmpty()) {
      return true;
    }
    return switch (interval.kind()) {
      case GET_READY, WARM_UP, COOL_DOWN -> interval.kind() != last.get().kind();
      case WORK -> course.lastWork(interval).filter(it -> isSameRound(it, interval)).isEmpty();
      case SWITCH, REST -> false;
    };
  }

  private static boolean isSameRound(Interval one, Interval other) {
    return one.at().orElseThrow().superset() == other.at().orElseThrow().superset()
        && one.round().equals(other.round());
  }

  private Block block(Interval first) {
    String time = Times.clock(first.start());
    if (first.kind() != IntervalKind.WORK) {
      return new Block(first.kind().id(), time, Names.kind(first.kind()), "", new ArrayList<>());
    }
    int number = first.at().orElseThrow().superset();
    Superset superset =
        plan.session().supersets().stream()
            .filter(it -> it.number() == number)
            .findFirst()
            .orElseThrow();
    OptionalInt round = first.round();
    String rounds =
        round.isPresent()
            ? ", round " + round.getAsInt() + " of " + plan.problem().clock().rounds()
            : "";
    String title =
        English.capital(BlockWords.name(plan))
            + " "
            + number
            + " of "
            + plan.session().supersets().size()
            + rounds;
    return new Block("work", time, title, kinds.heading(superset), new ArrayList<>());
  }

  private Row row(Announcement announcement) {
    Interval interval = announcement.interval();
    String time = Times.clock(interval.start());
    String length = interval.seconds() + " s";
    String kind = interval.kind().id();
    return switch (interval.kind()) {
      case WORK -> work(interval, time, length);
      case SWITCH, REST -> {
        List<String> tasks =
            course.changeoverIn(interval).map(handling::sentences).orElse(List.of());
        List<String> said = new ArrayList<>(announcement.sentences());
        said.removeAll(tasks);
        yield Row.pause(
            time,
            length,
            kind,
            Names.kind(interval.kind()),
            String.join(" ", tasks),
            String.join(" ", said));
      }
      case GET_READY, WARM_UP, COOL_DOWN -> move(announcement, time, length);
    };
  }

  private Row move(Announcement announcement, String time, String length) {
    Interval interval = announcement.interval();
    return new Row(
        time,
        length,
        interval.kind().id(),
        "",
        interval.exercise().map(Exercise::name).orElse(""),
        Names.side(interval),
        "",
        "",
        "",
        "",
        "",
        "",
        List.of(),
        announcement.text(),
        picture(interval));
  }

  private Row work(Interval work, String time, String length) {
    Exercise exercise = work.exercise().orElseThrow();
    boolean first = explained.add(exercise.id());
    boolean again = work.side().equals(Optional.of(Side.RIGHT));
    Optional<Changeover> straight =
        course
            .lastWork(work)
            .filter(last -> last.end() == work.start())
            .flatMap(last -> course.changeoverInto(work));
    return new Row(
        time,
        length,
        "work",
        work.at().orElseThrow().letter(),
        exercise.name(),
        Names.side(work) + (again && !first ? ", same again" : ""),
        again ? "" : with(work),
        straight.map(handling::sentences).map(it -> String.join(" ", it)).orElse(""),
        first ? exercise.setup() : "",
        first ? exercise.cues().stream().findFirst().orElse("") : "",
        first ? String.join(" ", exercise.cues().stream().skip(1).toList()) : "",
        first ? exercise.faults().stream().findFirst().orElse("") : "",
        shows.of(work),
        "",
        first ? picture(work) : "");
  }

  private String picture(Interval interval) {
    return interval.exercise().flatMap(pictures::still).orElse("");
  }

  /** What an exercise needs, and what else is still on. */
  private String with(Interval work) {
    List<Item> needs = Items.of(work.exercise().orElseThrow(), catalogue);
    List<String> words = new ArrayList<>(needs.stream().map(items::written).toList());
    for (Item item : course.inUse(work)) {
      if (!needs.contains(item)) {
        words.add(items.said(item) + " still on");
      }
    }
    return String.join(", ", words);
  }
}

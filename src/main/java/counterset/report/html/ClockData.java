package counterset.report.html;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.explain.Announcement;
import counterset.explain.Announcements;
import counterset.explain.Course;
import counterset.explain.HandlingWords;
import counterset.explain.ItemWords;
import counterset.explain.Items;
import counterset.explain.Modifications;
import counterset.explain.TrackWords;
import counterset.json.Json;
import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Plan;
import counterset.model.Track;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the clock of a page runs by, as JSON. */
final class ClockData {

  private final Plan plan;
  private final Catalogue catalogue;
  private final Course course;
  private final HandlingWords handling;
  private final ItemWords items;
  private final Modifications modifications;

  private ClockData(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.catalogue = catalogue;
    this.course = new Course(plan, catalogue);
    this.handling = new HandlingWords(plan.problem(), catalogue);
    this.items = new ItemWords(plan.problem());
    this.modifications = new Modifications(plan);
  }

  /** JSON that may stand in a script element: no text in it can end the element. */
  static String of(Plan plan, Catalogue catalogue) {
    return Json.line(new ClockData(plan, catalogue).session())
        .replace("<", "\\u003c")
        .replace("\u2028", "\\u2028")
        .replace("\u2029", "\\u2029");
  }

  private ObjectNode session() {
    ObjectNode session = Json.object();
    TrackWords words = new TrackWords(catalogue);
    ArrayNode tracks = session.putArray("tracks");
    plan.tracks().forEach(track -> tracks.add(English.capital(words.of(track))));
    ArrayNode intervals = session.putArray("intervals");
    Announcements.of(plan, catalogue).forEach(it -> intervals.add(interval(it)));
    return session;
  }

  private ObjectNode interval(Announcement announcement) {
    Interval interval = announcement.interval();
    ObjectNode node = Json.object();
    node.put("start", interval.start());
    node.put("end", interval.end());
    node.put("kind", interval.kind().id());
    node.put("word", Names.kind(interval.kind()));
    node.put("place", place(interval));
    interval.exercise().ifPresent(exercise -> node.set("now", move(interval)));
    if (interval.kind() == IntervalKind.WORK) {
      node.put("cue", interval.exercise().flatMap(it -> it.cues().stream().findFirst()).orElse(""));
    }
    ArrayNode next = node.putArray("next");
    next(interval).forEach(it -> next.add(move(it)));
    node.put("then", then(interval));
    node.put("tasks", tasks(interval));
    node.put("say", String.join(" ", announcement.withoutCountdown()));
    return node;
  }

  /** Where in the session: {@code 3A}, in words. */
  private String place(Interval interval) {
    if (interval.at().isEmpty() || interval.kind() != IntervalKind.WORK) {
      return "";
    }
    String round =
        interval.round().isPresent()
            ? ", round " + interval.round().getAsInt() + " of " + plan.problem().clock().rounds()
            : "";
    return interval.at().get() + round;
  }

  private ObjectNode move(Interval interval) {
    Exercise exercise = interval.exercise().orElseThrow();
    ObjectNode node = Json.object();
    node.put("id", exercise.id());
    node.put("place", place(interval));
    node.put("name", exercise.name());
    node.put("side", Names.side(interval));
    node.put(
        "with",
        String.join(", ", Items.of(exercise, catalogue).stream().map(items::written).toList()));
    ArrayNode instead = node.putArray("instead");
    for (int i = 0; i < plan.tracks().size(); i++) {
      Track track = plan.tracks().get(i);
      Interval own = modifications.asDoneBy(track, interval);
      if (!own.exercise().equals(interval.exercise())) {
        instead.add(instead(i, own));
      }
    }
    return node;
  }

  private static ObjectNode instead(int track, Interval own) {
    ObjectNode node = Json.object();
    node.put("track", track);
    own.exercise().ifPresent(it -> node.put("id", it.id()));
    node.put("name", own.exercise().map(Exercise::name).orElse("Leave this one out"));
    node.put("side", Names.side(own));
    return node;
  }

  /**
   * What comes next: the other exercise of a superset, or before a superset all of its exercises.
   */
  private List<Interval> next(Interval interval) {
    Optional<Interval> following =
        plan.timeline().stream().filter(it -> it.start() == interval.end()).findFirst();
    if (following.isEmpty()) {
      return List.of();
    }
    IntervalKind kind = following.get().kind();
    if (kind == IntervalKind.WARM_UP || kind == IntervalKind.COOL_DOWN) {
      return following.get().exercise().isPresent() ? List.of(following.get()) : List.of();
    }
    Optional<Interval> work = course.nextWork(interval);
    boolean inside =
        interval.kind() == IntervalKind.WORK && work.filter(it -> isSame(it, interval)).isPresent();
    return inside || interval.kind() == IntervalKind.SWITCH
        ? work.stream().toList()
        : work.stream().flatMap(this::superset).toList();
  }

  private Stream<Interval> superset(Interval first) {
    return plan.timeline().stream()
        .filter(it -> it.kind() == IntervalKind.WORK && it.start() >= first.start())
        .takeWhile(it -> isSame(it, first));
  }

  private static boolean isSame(Interval one, Interval other) {
    return one.at().orElseThrow().superset() == other.at().orElseThrow().superset()
        && one.round().equals(other.round());
  }

  /** The pause before what comes next; empty text if there is none. */
  private String then(Interval interval) {
    return plan.timeline().stream()
        .filter(it -> it.start() == interval.end())
        .filter(it -> it.kind() == IntervalKind.REST || it.kind() == IntervalKind.SWITCH)
        .map(it -> Names.kind(it.kind()) + " " + it.seconds() + " s, then")
        .findFirst()
        .orElse("");
  }

  /** What is handled before the next work interval, and where the body goes. */
  private String tasks(Interval interval) {
    boolean moves =
        interval.kind() == IntervalKind.WORK
            || interval.kind() == IntervalKind.REST
            || interval.kind() == IntervalKind.SWITCH;
    return moves
        ? course
            .changeoverIn(interval)
            .map(handling::sentences)
            .map(it -> String.join(" ", it))
            .orElse("")
        : "";
  }
}

package counterset.typed;

import counterset.ask.AskTopic;
import counterset.ask.ClockPart;
import counterset.ask.EquipmentText;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Load;
import counterset.model.Muscle;
import counterset.model.Need;
import counterset.model.Owned;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.Superset;
import counterset.model.Target;
import counterset.timeline.SessionLength;
import counterset.timeline.Timeline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes the problem that a typed session is judged by, and says where each part comes from. */
final class ProblemMaker {

  private static final List<String> TOLD_HERE =
      List.of("targets:", "equipment:", "clock:", "around it:", "supersets:", "seed");

  private final Catalogue catalogue;
  private final LineReader lines;
  private final Asked ask;
  private final Session session;
  private final Optional<Problem> asked;
  private final Set<AskTopic> silent;
  private final Intervals clock;
  private final int minutes;
  private final int level;

  ProblemMaker(
      Catalogue catalogue, LineReader lines, Asked ask, Session session, OptionalInt rounds) {
    this.catalogue = catalogue;
    this.lines = lines;
    this.ask = ask;
    this.session = session;
    this.asked = ask.problem();
    this.silent = ask.silent();
    OptionalInt said = lines.sayings.clock.minutes();
    boolean open = said.isEmpty() && silent.contains(AskTopic.MINUTES);
    Intervals plain = clock(rounds);
    int typed =
        said.orElse(
            open ? roundedUp(plain) : asked.map(Problem::minutes).orElse(Problem.DEFAULT_MINUTES));
    this.clock = open && asked.isEmpty() ? lengthened(plain, typed) : plain;
    this.minutes = typed;
    this.level = asked.map(Problem::level).orElse(Math.max(Problem.DEFAULT_LEVEL, hardest()));
  }

  private int hardest() {
    return session.work().mapToInt(Exercise::level).max().orElse(1);
  }

  private Intervals clock(OptionalInt rounds) {
    Intervals base = asked.map(Problem::clock).orElse(Intervals.EXPRESS);
    int positions =
        session.supersets().stream().mapToInt(it -> it.exercises().size()).max().orElse(0);
    int wanted =
        lines
            .sayings
            .clock
            .perSuperset()
            .orElse(asked.isPresent() ? base.perSuperset() : positions);
    int work = seconds(ClockPart.WORK, base.work());
    return new Intervals(
        seconds(ClockPart.GET_READY, base.getReady()),
        around(ClockPart.WARM_UP, base.warmUp(), session.warmUp()),
        work,
        seconds(ClockPart.SWITCH, base.between()),
        seconds(ClockPart.REST, base.rest()),
        around(ClockPart.COOL_DOWN, base.coolDown(), session.coolDown()),
        Math.max(1, Math.max(wanted, positions)),
        rounds.orElse(base.rounds()));
  }

  /** What was typed for it, or as long as the moves take that were typed. */
  private int around(ClockPart part, int base, List<Exercise> moves) {
    int own = moves.stream().mapToInt(move -> move.seconds().orElse(0)).sum();
    boolean free = asked.isEmpty() && !moves.isEmpty();
    return seconds(part, free ? own : Math.max(base, own));
  }

  private int seconds(ClockPart part, int standard) {
    return lines.sayings.clock.seconds(part).orElse(standard);
  }

  private int roundedUp(Intervals intervals) {
    return Math.max(1, (Timeline.plainSeconds(full(intervals), intervals) + 59) / 60);
  }

  /** The session with all places filled, as the clock of a plan has it. */
  private Session full(Intervals intervals) {
    List<Superset> full =
        session.supersets().stream()
            .map(
                it ->
                    it.exercises().isEmpty()
                        ? it
                        : new Superset(
                            it.number(),
                            Stream.concat(
                                    it.exercises().stream(),
                                    Collections.nCopies(3, it.exercises().get(0)).stream())
                                .limit(intervals.perSuperset())
                                .toList()))
            .toList();
    return new Session(session.warmUp(), full, session.coolDown());
  }

  /** Where another superset would fit into the rounding of an assumed length, the warm-up grows. */
  private Intervals lengthened(Intervals plain, int cap) {
    int number = session.supersets().size();
    boolean fitsMore = SessionLength.supersetsThatFit(plain, cap) > number;
    if (!fitsMore || lines.sayings.clock.seconds(ClockPart.WARM_UP).isPresent()) {
      return plain;
    }
    int free = 60 * cap - SessionLength.seconds(plain, number);
    return new Intervals(
        plain.getReady(),
        plain.warmUp() + free,
        plain.work(),
        plain.between(),
        plain.rest(),
        plain.coolDown(),
        plain.perSuperset(),
        plain.rounds());
  }

  Problem problem() {
    return asked
        .map(Problem::toBuilder)
        .orElseGet(Problem::builder)
        .title(lines.title.or(() -> asked.map(Problem::title)).orElse("Typed session"))
        .minutes(minutes)
        .clock(clock)
        .targets(targets())
        .equipment(equipment())
        .level(level)
        .build();
  }

  /** What the exercises train first, in the order of the catalogue. */
  private List<Target> targets() {
    if (!silent.contains(AskTopic.TARGETS)) {
      return asked.orElseThrow().targets();
    }
    Set<String> trained =
        session.work().flatMap(it -> it.primary().stream()).collect(Collectors.toSet());
    return catalogue.muscles().values().stream()
        .map(Muscle::id)
        .filter(trained::contains)
        .map(id -> new Target(id, 1, 1))
        .toList();
  }

  /** What the exercises need, with the masses that were typed. */
  private List<Owned> equipment() {
    if (!silent.contains(AskTopic.EQUIPMENT)) {
      return asked.orElseThrow().equipment();
    }
    Map<String, Integer> counts = new LinkedHashMap<>();
    session
        .work()
        .flatMap(it -> it.needs().stream())
        .forEach((Need need) -> counts.merge(need.equipment(), need.count(), Math::max));
    lines.sayings.mentioned.forEach(owned -> counts.merge(owned.id(), 1, Math::max));
    return counts.entrySet().stream()
        .filter(it -> !catalogue.equipment().get(it.getKey()).alwaysThere())
        .map(
            it -> new Owned(it.getKey(), it.getValue(), kg(it.getKey()), EnumSet.allOf(Load.class)))
        .toList();
  }

  private List<Double> kg(String id) {
    Set<Double> kg = new LinkedHashSet<>();
    lines.sayings.mentioned.stream()
        .filter(it -> it.id().equals(id))
        .forEach(it -> kg.addAll(it.kg()));
    for (Item item : lines.all()) {
      boolean held =
          item.exercise().needs().stream()
              .anyMatch(need -> need.equipment().equals(id) && need.load().isPresent());
      if (held) {
        item.segment.notes.forEach(noted -> kg.addAll(noted.note().kg()));
      }
    }
    return List.copyOf(kg);
  }

  /** One plain line a topic. */
  List<String> readAs() {
    List<String> text = new ArrayList<>();
    text.add(minutes + (minutes == 1 ? " minute" : " minutes") + minutesFrom());
    text.add(
        "targets: "
            + targets().stream()
                .map(it -> lower(catalogue.muscles().get(it.muscle()).name()))
                .collect(Collectors.joining(", "))
            + (silent.contains(AskTopic.TARGETS)
                ? " (assumed: what the exercises train first)"
                : ""));
    List<Owned> owned = equipment();
    text.add(
        "equipment: "
            + (owned.isEmpty()
                ? "none"
                : owned.stream()
                    .map(it -> EquipmentText.of(catalogue.equipment().get(it.id()), it, false))
                    .collect(Collectors.joining(", ")))
            + (silent.contains(AskTopic.EQUIPMENT) ? " (assumed: what the exercises need)" : ""));
    List<String> asAsked =
        ask.echo().stream()
            .filter(line -> TOLD_HERE.stream().noneMatch(line::startsWith))
            .filter(line -> !line.matches("\\d+ minutes?( \\(assumed\\))?"))
            .toList();
    text.addAll(asAsked);
    if (asked.isEmpty()) {
      text.add("limitations: none named");
    }
    if (ask.echo().isEmpty()) {
      text.add("level " + level + (asked.isEmpty() ? " (assumed)" : ""));
    }
    text.add(
        "clock: "
            + part(ClockPart.WORK, clock.work())
            + (clock.between() > 0 ? ", " + part(ClockPart.SWITCH, clock.between()) : "")
            + ", "
            + part(ClockPart.REST, clock.rest())
            + (clock.rounds() > 1 ? ", " + clock.rounds() + " rounds" : ""));
    text.add(
        "around it: "
            + part(ClockPart.GET_READY, clock.getReady())
            + ", "
            + part(ClockPart.WARM_UP, clock.warmUp())
            + ", "
            + part(ClockPart.COOL_DOWN, clock.coolDown()));
    moves(text, "warm-up", session.warmUp(), clock.warmUp());
    moves(text, "cool-down", session.coolDown(), clock.coolDown());
    return text;
  }

  private String minutesFrom() {
    if (lines.sayings.clock.minutes().isPresent()) {
      return "";
    }
    boolean open = silent.contains(AskTopic.MINUTES);
    return open ? " (assumed: what the clock of these lines comes to)" : "";
  }

  /** The seconds of a part, and where they come from unless they were typed or asked for. */
  private String part(ClockPart part, int seconds) {
    String text = seconds == 0 ? "no " + part.text() : seconds + " s " + part.text();
    OptionalInt typed = lines.sayings.clock.seconds(part);
    if (typed.isPresent()) {
      int before = asked.map(it -> of(part, it.clock())).orElse(seconds);
      return before == seconds ? text : text + " (as typed, instead of " + before + " s)";
    }
    return asked.isPresent() ? text : text + " (assumed)";
  }

  private static int of(ClockPart part, Intervals clock) {
    return switch (part) {
      case GET_READY -> clock.getReady();
      case WARM_UP -> clock.warmUp();
      case WORK -> clock.work();
      case SWITCH -> clock.between();
      case REST -> clock.rest();
      case COOL_DOWN -> clock.coolDown();
    };
  }

  private static void moves(List<String> text, String part, List<Exercise> typed, int seconds) {
    if (typed.isEmpty() && seconds > 0) {
      text.add(part + ": no moves typed, so the program chooses them");
    }
  }

  private static String lower(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}

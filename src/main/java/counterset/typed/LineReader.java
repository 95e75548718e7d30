package counterset.typed;

import counterset.ask.AskTopic;
import counterset.ask.ClockPart;
import counterset.model.Catalogue;
import counterset.model.EquipmentKind;
import counterset.model.Owned;
import counterset.model.Part;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Goes through the lines and gathers what they say. Lives for one reading. */
final class LineReader {

  final List<Group> groups = new ArrayList<>();
  final List<Item> warmUp = new ArrayList<>();
  final List<Item> coolDown = new ArrayList<>();
  final List<Owned> mentioned = new ArrayList<>();
  final ClockSaid clock;
  Optional<String> title = Optional.empty();

  /** What masses are taken for. */
  static final String MASS = "the mass; the score knows light, medium and heavy only";

  private final Catalogue catalogue;
  private final SegmentReader segments;
  private final ItemReader items;
  private final Asked ask;
  private final Report report;
  private final Set<String> worn = new LinkedHashSet<>();
  private Part section = Part.MAIN;
  private boolean begun;
  private boolean first = true;
  private Group open;

  LineReader(
      Catalogue catalogue, SegmentReader segments, ItemReader items, Asked ask, Report report) {
    this.catalogue = catalogue;
    this.segments = segments;
    this.items = items;
    this.ask = ask;
    this.report = report;
    this.clock = new ClockSaid(report);
  }

  void read(Source source) {
    if (!source.remark().isEmpty()) {
      int at = source.text().length();
      report.lines.add(
          new Taken(
              source.number(),
              source.column(at),
              Clean.printable(source.remark().strip()),
              "",
              "a remark",
              ""));
    }
    if (source.isBlank()) {
      blank(source);
      return;
    }
    if (source.text().strip().matches("[-=_*~.+|<> ]+")) {
      report.taken(source, source.first(), source.text().length(), "a line between parts");
      endGroup();
      return;
    }
    if (first && isAsk(source)) {
      ask.take(source, source.first());
      return;
    }
    Optional<Heading> heading = Heading.of(source);
    if (heading.isPresent()) {
      heading(source, heading.get());
    } else {
      content(source, Label.of(source));
    }
  }

  /** Only lines before the first exercise and heading can ask. */
  private boolean isAsk(Source source) {
    List<Segment> all = segments.read(source);
    boolean words = all.stream().anyMatch(Segment::hasWords);
    boolean wearing = worn(all, source).isPresent();
    return words && !wearing && ask.canBe(source);
  }

  private void blank(Source source) {
    if (!source.remark().isEmpty()) {
      return;
    }
    endGroup();
    if (section == Part.WARM_UP
        && (!warmUp.isEmpty() || clock.seconds(ClockPart.WARM_UP).isPresent())) {
      section = Part.MAIN;
    }
  }

  private void heading(Source source, Heading heading) {
    Source rest = source.from(heading.end());
    switch (heading.kind()) {
      case TITLE -> {
        title = Optional.of(rest.text().strip());
        report.taken(source, source.first(), source.text().length(), "the title");
        return;
      }
      case ASK -> {
        ask.take(source, heading.end());
        return;
      }
      case WARM_UP -> section = Part.WARM_UP;
      case COOL_DOWN -> section = Part.COOL_DOWN;
      default -> section = Part.MAIN;
    }
    first = false;
    begun = true;
    report.taken(source, heading.start(), heading.end(), heading.kind().text());
    endGroup();
    if (heading.kind() == Heading.Kind.SUPERSET) {
      open = new Group("", true);
      open.headed = true;
      groups.add(open);
    }
    if (!rest.isBlank()) {
      content(rest, Label.of(rest));
    }
  }

  private void content(Source source, Label label) {
    Source rest = source.from(label.end());
    List<Segment> all = segments.read(rest);
    if (all.stream().noneMatch(Segment::hasWords)) {
      clockLine(rest, all);
      return;
    }
    Optional<Boolean> wearing = worn(all, rest);
    if (wearing.isPresent()) {
      wear(all, wearing.get(), rest);
      return;
    }
    if (isRest(all)) {
      all.forEach(segment -> clock(segment, rest));
      report.taken(rest, rest.first(), rest.text().length(), "a rest");
      endGroup();
      return;
    }
    if (label.placed() && section == Part.WARM_UP) {
      section = Part.MAIN;
    }
    List<List<Item>> found =
        all.stream()
            .map(it -> it.hasWords() ? items.items(rest, it, context()) : List.<Item>of())
            .toList();
    boolean clear =
        found.stream().flatMap(List::stream).allMatch(it -> !it.found.exercises().isEmpty());
    boolean some = found.stream().flatMap(List::stream).anyMatch(Item::isClear);
    if (first && !some && isLikeAsk(rest, clear)) {
      ask.faults(rest, rest.first());
      first = false;
      return;
    }
    if (!clear && isEquipment(all)) {
      all.forEach(segment -> said(segment, rest, null));
      report.taken(rest, rest.first(), rest.text().length(), "equipment at hand");
      return;
    }
    first = false;
    begun = true;
    place(rest, label, all, found);
  }

  /**
   * Whether a line that is no ask was meant to be one.
   *
   * @param near whether its words are near the names of exercises
   */
  private static boolean isLikeAsk(Source source, boolean near) {
    return !near && source.text().contains(",") || source.text().matches("(?i).*\\d\\s*min.*");
  }

  private Wanted context() {
    boolean limited = !ask.silent().contains(AskTopic.EQUIPMENT);
    return new Wanted(List.of(), section, false, false, ask.equipment(), limited, worn);
  }

  private static boolean isRest(List<Segment> all) {
    return all.stream()
        .flatMap(segment -> segment.words().stream())
        .allMatch(
            word ->
                Set.of("rest", "between", "superset", "after", "each", "then", "round", "pair")
                    .contains(word.key()));
  }

  private static boolean isEquipment(List<Segment> all) {
    return all.stream()
        .flatMap(segment -> segment.words().stream())
        .allMatch(word -> !word.equipment().isEmpty() || word.key().equals("and"));
  }

  /** Whether a line says that something is strapped on, or taken off; empty if neither. */
  private Optional<Boolean> worn(List<Segment> all, Source source) {
    List<Word> words = all.stream().flatMap(segment -> segment.words().stream()).toList();
    List<Word> others = words.stream().filter(word -> word.equipment().isEmpty()).toList();
    boolean named =
        words.stream().anyMatch(word -> word.equipment().stream().anyMatch(this::isWorn));
    boolean plain =
        others.stream()
            .allMatch(
                word ->
                    Set.of("off", "put", "strap", "take", "remove", "now").contains(word.key()));
    if (!named || !plain) {
      return Optional.empty();
    }
    boolean off = others.stream().anyMatch(word -> Set.of("off", "remove").contains(word.key()));
    boolean on = source.text().matches("(?i).*\\bon\\b.*") || !others.isEmpty();
    return off ? Optional.of(false) : on ? Optional.of(true) : Optional.empty();
  }

  private boolean isWorn(String id) {
    return catalogue.equipment().get(id).kind() == EquipmentKind.WORN;
  }

  private void wear(List<Segment> all, boolean on, Source source) {
    all.forEach(segment -> said(segment, source, null));
    Set<String> ids = new LinkedHashSet<>();
    for (Segment segment : all) {
      segment
          .words()
          .forEach(word -> word.equipment().stream().filter(this::isWorn).forEach(ids::add));
    }
    if (on) {
      worn.addAll(ids);
    } else {
      worn.removeAll(ids);
    }
    report.taken(
        source,
        source.first(),
        source.text().length(),
        String.join(
                " and ",
                ids.stream()
                    .map(id -> catalogue.equipment().get(id).name().toLowerCase(Locale.ROOT))
                    .toList())
            + (on ? " on, from here" : " off, from here"));
  }

  private void clockLine(Source source, List<Segment> all) {
    boolean rest = false;
    for (Segment segment : all) {
      rest |=
          segment.clock.stream().anyMatch(it -> it.heard().seconds().containsKey(ClockPart.REST));
      boolean around = section != Part.MAIN;
      for (Segment.Noted noted : segment.notes) {
        OptionalInt work = noted.note().work();
        if (work.isPresent()) {
          ClockPart part =
              section == Part.WARM_UP
                  ? ClockPart.WARM_UP
                  : section == Part.COOL_DOWN ? ClockPart.COOL_DOWN : ClockPart.REST;
          clock.seconds(part, work.getAsInt(), source, noted.start());
          report.taken(
              source, noted.start(), noted.end(), work.getAsInt() + " s of " + part.text());
          rest |= !around;
        } else {
          note(noted, source, open);
        }
      }
      clock(segment, source);
      remarks(segment, source);
    }
    if (all.isEmpty()) {
      report.fault(source, source.first(), "Nothing here is understood. Remove it.");
    }
    if (rest && begun) {
      endGroup();
    }
  }

  /** Takes what a segment says of the clock; minutes of a part of the session are that part's. */
  private void clock(Segment segment, Source source) {
    for (Segment.Said said : segment.clock) {
      OptionalInt minutes = said.heard().minutes();
      if (minutes.isPresent() && begun && said.heard().seconds().isEmpty()) {
        ClockPart part =
            section == Part.WARM_UP
                ? ClockPart.WARM_UP
                : section == Part.COOL_DOWN ? ClockPart.COOL_DOWN : ClockPart.WORK;
        clock.seconds(part, 60 * minutes.getAsInt(), source, said.start());
      } else if (said.heard().rounds().isPresent() && open != null) {
        rounds(open, said.heard().rounds(), source, said.start());
      } else {
        clock.take(said.heard(), source, said.start());
      }
      report.taken(source, said.start(), said.end(), ClockText.of(said.heard(), section, begun));
    }
  }

  private void note(Segment.Noted noted, Source source, Group group) {
    OptionalInt rounds = noted.note().rounds();
    if (rounds.isPresent() && section == Part.MAIN) {
      if (group == null) {
        clock.rounds(rounds.getAsInt(), source, noted.start());
      } else {
        rounds(group, rounds, source, noted.start());
      }
    }
    String as = noted.note().as();
    OptionalInt work = noted.note().work();
    if (work.isPresent() && section == Part.MAIN) {
      clock.seconds(ClockPart.WORK, work.getAsInt(), source, noted.start());
    } else if (work.isPresent()) {
      as = work.getAsInt() + " s; the program gives each move its own seconds";
    }
    report.taken(source, noted.start(), noted.end(), as);
  }

  private void rounds(Group group, OptionalInt rounds, Source source, int start) {
    if (group.rounds.isPresent() && !group.rounds.equals(rounds)) {
      report.fault(
          source,
          start,
          "This superset has "
              + group.rounds.getAsInt()
              + " rounds by what stands before. Keep one of the two.");
      return;
    }
    group.rounds = rounds;
    group.roundsAt = source;
    group.roundsStart = start;
  }

  private void said(Segment segment, Source source, Group group) {
    segment.notes.forEach(noted -> note(noted, source, group));
    clock(segment, source);
    for (Segment.Said said : segment.equipment) {
      mentioned.addAll(said.heard().equipment());
      if (said.heard().equipment().stream().anyMatch(owned -> !owned.kg().isEmpty())) {
        report.taken(source, said.start(), said.end(), MASS);
      }
    }
    remarks(segment, source);
  }

  private void remarks(Segment segment, Source source) {
    segment.odd.forEach(odd -> report.fault(source, odd.start(), odd.message()));
    for (Segment.Piece piece : segment.pieces) {
      if (piece.bracketed() && !piece.isEquipment()) {
        report.taken(source, piece.start(), piece.end(), "a remark");
      }
    }
  }

  private void place(Source source, Label label, List<Segment> all, List<List<Item>> found) {
    List<Item> line = found.stream().flatMap(List::stream).toList();
    if (section != Part.MAIN) {
      (section == Part.WARM_UP ? warmUp : coolDown).addAll(line);
      all.forEach(segment -> said(segment, source, null));
      return;
    }
    Group group = group(source, label, line.size());
    group.items.addAll(line);
    open = group;
    all.forEach(segment -> said(segment, source, group));
    if (!group.headed && !label.placed() && line.size() > 1) {
      endGroup();
    }
  }

  /** The superset that a line belongs to. */
  private Group group(Source source, Label label, int size) {
    if (open != null && open.headed) {
      return open;
    }
    boolean goesOn =
        open != null
            && (label.placed()
                ? label.group().isEmpty() ? !label.first() : open.key.equals(label.group())
                : !open.whole && size == 1);
    if (goesOn) {
      return open;
    }
    Group last = groups.isEmpty() ? null : groups.get(groups.size() - 1);
    if (last != null && !label.group().isEmpty() && last.key.equals(label.group())) {
      return last;
    }
    if (!label.group().isEmpty() && groups.stream().anyMatch(it -> it.key.equals(label.group()))) {
      report.fault(
          source,
          source.first(),
          "Superset "
              + label.group().toUpperCase(Locale.ROOT)
              + " stands in two places. Number the supersets anew.");
    }
    Group group = new Group(label.group(), label.placed() || size > 1);
    groups.add(group);
    return group;
  }

  private void endGroup() {
    open = null;
  }

  List<Item> all() {
    List<Item> all = new ArrayList<>(warmUp);
    groups.forEach(group -> all.addAll(group.items));
    all.addAll(coolDown);
    return all;
  }
}

package counterset.typed;

import counterset.ask.AskTopic;
import counterset.ask.ClockPart;
import counterset.model.Catalogue;
import counterset.model.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Goes through the lines and gathers what they say. Lives for one reading. */
final class LineReader {

  final List<Group> groups = new ArrayList<>();
  final List<Item> warmUp = new ArrayList<>();
  final List<Item> coolDown = new ArrayList<>();
  final Sayings sayings;
  Optional<String> title = Optional.empty();

  private final SegmentReader segments;
  private final ItemReader items;
  private final Asked ask;
  private final Report report;
  private final Wearing wearing;
  private Part section = Part.MAIN;
  private boolean begun;
  private boolean first = true;
  private Group open;

  LineReader(
      Catalogue catalogue, SegmentReader segments, ItemReader items, Asked ask, Report report) {
    this.segments = segments;
    this.items = items;
    this.ask = ask;
    this.report = report;
    this.sayings = new Sayings(report);
    this.wearing = new Wearing(catalogue, report);
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
    return words && wearing.read(all, source).isEmpty() && ask.canBe(source);
  }

  private void blank(Source source) {
    if (!source.remark().isEmpty()) {
      return;
    }
    endGroup();
    if (section == Part.WARM_UP
        && (!warmUp.isEmpty() || sayings.clock.seconds(ClockPart.WARM_UP).isPresent())) {
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
      if (sayings.line(rest, all, where(open)) && begun) {
        endGroup();
      }
      return;
    }
    Optional<Boolean> on = wearing.read(all, rest);
    if (on.isPresent()) {
      all.forEach(segment -> sayings.beside(segment, rest, where(null)));
      wearing.take(all, on.get(), rest);
      return;
    }
    if (isRest(all)) {
      sayings.line(rest, all, where(null));
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
      all.forEach(segment -> sayings.beside(segment, rest, where(null)));
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

  private Sayings.Where where(Group group) {
    return new Sayings.Where(section, begun, group);
  }

  private Wanted context() {
    boolean limited = !ask.silent().contains(AskTopic.EQUIPMENT);
    return new Wanted(List.of(), section, false, false, ask.equipment(), limited, wearing.now());
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

  private void place(Source source, Label label, List<Segment> all, List<List<Item>> found) {
    List<Item> line = found.stream().flatMap(List::stream).toList();
    if (section != Part.MAIN) {
      (section == Part.WARM_UP ? warmUp : coolDown).addAll(line);
      all.forEach(segment -> sayings.beside(segment, source, where(null)));
      return;
    }
    Group group = group(source, label, line.size());
    group.items.addAll(line);
    open = group;
    all.forEach(segment -> sayings.beside(segment, source, where(group)));
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

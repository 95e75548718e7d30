package counterset.typed;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Owned;
import counterset.model.Session;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Puts together what the lines have said. Lives for one reading. */
final class Finish {

  private static final String LETTERS = "ABC";

  private final Catalogue catalogue;
  private final NameMatcher matcher;
  private final LineReader lines;
  private final Asked ask;
  private final Report report;

  Finish(Catalogue catalogue, NameMatcher matcher, LineReader lines, Asked ask, Report report) {
    this.catalogue = catalogue;
    this.matcher = matcher;
    this.lines = lines;
    this.ask = ask;
    this.report = report;
  }

  TypedReading reading() {
    nameAgain();
    ItemReader items = new ItemReader(matcher);
    lines.all().stream().filter(it -> !it.isClear()).forEach(it -> items.fault(it, report));
    if (lines.groups.stream().allMatch(Group::isEmpty) && report.faults.isEmpty()) {
      report.faults.add(
          new TypedFault(
              0,
              0,
              "No exercise of the main part was found. Type one exercise a line, such as \"goblet"
                  + " squat / push-up\"."));
    }
    if (!lines.all().stream().allMatch(Item::isClear) || !report.faults.isEmpty()) {
      return new TypedReading(Optional.empty(), report.lines, report.faults);
    }
    return laidOut();
  }

  /** Names that were not clear, now that it is known which equipment the session uses. */
  private void nameAgain() {
    Set<String> known = new LinkedHashSet<>(ask.equipment());
    if (known.isEmpty()) {
      lines.sayings.mentioned.stream().map(Owned::id).forEach(known::add);
      lines.all().stream()
          .filter(Item::isClear)
          .forEach(it -> known.addAll(NameMatcher.needs(it.exercise())));
    }
    lines.all().stream()
        .filter(it -> !it.isClear() && !it.found.exercises().isEmpty())
        .forEach(it -> it.found = matcher.find(it.wanted.knowing(known)));
  }

  private TypedReading laidOut() {
    int size =
        lines
            .sayings
            .clock
            .perSuperset()
            .orElse(ask.problem().map(it -> it.clock().perSuperset()).orElse(2));
    Layout layout = new Layout(lines.groups, size);
    List<Superset> supersets = new ArrayList<>();
    for (Layout.Places places : layout.supersets()) {
      int number = supersets.size() + 1;
      tell(number, places);
      supersets.add(new Superset(number, places.items().stream().map(Item::exercise).toList()));
    }
    lines.warmUp.forEach(item -> tell("warm-up", item));
    lines.coolDown.forEach(item -> tell("cool-down", item));
    OptionalInt rounds = rounds(layout);
    if (!report.faults.isEmpty()) {
      return new TypedReading(Optional.empty(), report.lines, report.faults);
    }
    Session session = new Session(exercises(lines.warmUp), supersets, exercises(lines.coolDown));
    ProblemMaker maker = new ProblemMaker(catalogue, lines, ask, session, rounds);
    List<String> readAs = new ArrayList<>(maker.readAs());
    if (layout.isPaired()) {
      readAs.add(
          "supersets: nothing tells them apart, so the lines were counted off by "
              + (size == 1 ? "ones" : size == 2 ? "twos" : "threes")
              + " (assumed)");
    }
    return new TypedReading(
        Optional.of(
            new TypedSession(
                maker.problem(),
                session,
                !lines.warmUp.isEmpty(),
                !lines.coolDown.isEmpty(),
                readAs)),
        report.lines,
        report.faults);
  }

  private static List<Exercise> exercises(List<Item> items) {
    return items.stream().map(Item::exercise).toList();
  }

  private void tell(int number, Layout.Places places) {
    if (places.size() > Layout.MOST) {
      Item fourth = places.items().get(Layout.MOST);
      report.fault(
          fourth.source,
          fourth.start,
          "A superset has at most three exercises, this one has "
              + places.size()
              + ". Put a blank line or a rest between supersets.");
      return;
    }
    Item before = null;
    for (int i = 0; i < places.size(); i++) {
      Item item = places.items().get(i);
      if (item != before) {
        boolean both = i + 1 < places.size() && places.items().get(i + 1) == item;
        String at = number + "" + LETTERS.charAt(i);
        tell(both ? at + " and " + number + LETTERS.charAt(i + 1) : at, item);
      }
      before = item;
    }
  }

  private void tell(String place, Item item) {
    report.taken(
        item.source, item.start, item.end, place, item.exercise().name(), item.exercise().id());
  }

  /** The rounds of all supersets, which share one number. */
  private OptionalInt rounds(Layout layout) {
    OptionalInt all = lines.sayings.clock.rounds();
    Group first = null;
    for (Layout.Places places : layout.supersets()) {
      Group group = places.group();
      first = first == null && group.rounds.isPresent() ? group : first;
    }
    if (first == null) {
      return all;
    }
    OptionalInt wanted = all.isPresent() ? all : first.rounds;
    List<String> others = new ArrayList<>();
    int number = 0;
    for (Layout.Places places : layout.supersets()) {
      number++;
      OptionalInt own = places.group().rounds;
      if (!own.equals(wanted) && (own.isPresent() || all.isEmpty())) {
        others.add(String.format(Locale.ROOT, "superset %d %s", number, said(own)));
      }
    }
    if (!others.isEmpty()) {
      report.fault(
          first.roundsAt,
          first.roundsStart,
          "All supersets have the same number of rounds. Here it is "
              + wanted.getAsInt()
              + ", but "
              + String.join(", ", others)
              + ". Say it once for all, on a line of its own.");
    }
    return wanted;
  }

  private static String said(OptionalInt rounds) {
    return rounds.isPresent() ? "has " + rounds.getAsInt() : "says nothing of rounds";
  }
}

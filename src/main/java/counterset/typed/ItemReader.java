package counterset.typed;

import counterset.model.Exercise;
import counterset.model.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Makes exercises of what stands on a line. */
final class ItemReader {

  private static final int SURE = 1;

  private final NameMatcher matcher;

  ItemReader(NameMatcher matcher) {
    this.matcher = matcher;
  }

  /**
   * The exercises of a segment: mostly one, several if a comma or "and" stands between their names.
   * An item that is not clear is a fault.
   */
  List<Item> items(Source source, Segment segment, Wanted context) {
    List<Segment.Piece> pieces =
        segment.pieces.stream().filter(piece -> !piece.bracketed()).toList();
    List<Word> mentions =
        segment.pieces.stream()
            .filter(piece -> piece.bracketed() && piece.isEquipment())
            .flatMap(piece -> piece.words().stream())
            .toList();
    if (pieces.size() > 1) {
      List<List<Word>> cut = merged(pieces);
      List<Item> several = each(source, segment, context, cut, mentions);
      if (cut.size() > 1
          && several.stream().allMatch(it -> it.isClear() && it.found.cost() <= SURE)) {
        return several;
      }
    }
    Item whole = item(source, segment, context, segment.words(), mentions);
    if (whole.isClear()) {
      return List.of(whole);
    }
    for (int i = 1; i + 1 < segment.words().size(); i++) {
      if (segment.words().get(i).key().equals("and")) {
        List<Word> words = segment.words();
        List<Item> both =
            each(
                source,
                segment,
                context,
                List.of(words.subList(0, i), words.subList(i + 1, words.size())),
                mentions);
        if (both.stream().allMatch(Item::isClear)) {
          return both;
        }
      }
    }
    List<Item> several = each(source, segment, context, merged(pieces), mentions);
    return several.size() > 1 && several.stream().anyMatch(Item::isClear)
        ? several
        : List.of(whole);
  }

  /** Words of pieces; one that only names equipment belongs to the one before it. */
  private static List<List<Word>> merged(List<Segment.Piece> pieces) {
    List<List<Word>> merged = new ArrayList<>();
    for (Segment.Piece piece : pieces) {
      if (piece.isEquipment() && !merged.isEmpty()) {
        merged.get(merged.size() - 1).addAll(piece.words());
      } else {
        merged.add(new ArrayList<>(piece.words()));
      }
    }
    return merged;
  }

  private List<Item> each(
      Source source, Segment segment, Wanted context, List<List<Word>> cut, List<Word> mentions) {
    return cut.stream().map(words -> item(source, segment, context, words, mentions)).toList();
  }

  private Item item(
      Source source, Segment segment, Wanted context, List<Word> words, List<Word> mentions) {
    List<Word> all = new ArrayList<>(words);
    all.addAll(mentions);
    boolean sided = segment.isSided();
    boolean loaded = segment.notes.stream().anyMatch(it -> !it.note().kg().isEmpty());
    Set<String> known = context.known();
    Wanted wanted =
        new Wanted(all, context.part(), sided, loaded, known, context.limited(), context.worn());
    int start = words.stream().mapToInt(Word::start).min().orElse(source.first());
    int end = words.stream().mapToInt(Word::end).max().orElse(start);
    return new Item(
        source,
        segment,
        wanted,
        start,
        end,
        matcher.find(wanted),
        sided,
        segment.notes.stream().flatMap(it -> it.note().one().stream()).findFirst());
  }

  /** What is wrong with an item that is not clear. */
  void fault(Item item, Report report) {
    if (!item.segment.suspects.isEmpty()) {
      item.segment.suspects.forEach(
          it -> report.fault(item.source, it.start(), it.fault().message()));
      return;
    }
    String typed = "\"" + item.source.typed(item.start, item.end) + "\"";
    List<Exercise> several = item.found.exercises();
    if (!several.isEmpty()) {
      report.fault(
          item.source,
          item.start,
          typed + " may be any of " + names(onePerRoot(several)) + ". Name one of them.");
      return;
    }
    NameMatcher.Found bare = withoutEquipment(item);
    if (bare.isClear()) {
      report.fault(
          item.source,
          item.start,
          typed
              + ": "
              + bare.exercise().name()
              + " is not known with that equipment. The ways of doing it: "
              + names(matcher.waysOf(bare.exercise()))
              + ".");
      return;
    }
    Optional<String> elsewhere = elsewhere(item);
    List<String> near = matcher.nearest(item.wanted);
    report.fault(
        item.source,
        item.start,
        typed
            + (elsewhere.isPresent() ? elsewhere.get() : " is no exercise of the catalogue")
            + (near.isEmpty() ? "." : "; the nearest: " + names(near) + ".")
            + " A remark goes behind # or into brackets."
            + (item.source.number() == 1 ? " A title begins with \"Title:\"." : ""));
  }

  private NameMatcher.Found withoutEquipment(Item item) {
    List<Word> words =
        item.wanted.words().stream().filter(word -> word.equipment().isEmpty()).toList();
    return words.size() == item.wanted.words().size()
        ? new NameMatcher.Found(List.of(), 0)
        : matcher.find(item.wanted.with(words));
  }

  /** The plainest way of doing each; its other ways would only make the list long. */
  private static List<String> onePerRoot(List<Exercise> several) {
    Map<String, String> names = new LinkedHashMap<>();
    several.forEach(it -> names.putIfAbsent(it.root(), it.name()));
    return List.copyOf(names.values());
  }

  /** An exercise of another part of the session. */
  private Optional<String> elsewhere(Item item) {
    for (Part part : Part.values()) {
      NameMatcher.Found found =
          part == item.wanted.part()
              ? new NameMatcher.Found(List.of(), 0)
              : matcher.find(
                  new Wanted(
                      item.wanted.words(), part, item.sided, false, Set.of(), false, Set.of()));
      if (found.isClear()) {
        return Optional.of(
            " is "
                + found.exercise().name()
                + ", which belongs to the "
                + (part == Part.MAIN ? "main part" : part.id())
                + " and not to the "
                + (item.wanted.part() == Part.MAIN ? "main part" : item.wanted.part().id()));
      }
    }
    return Optional.empty();
  }

  private static String names(List<String> names) {
    return names.stream().limit(4).map(it -> '"' + it + '"').collect(Collectors.joining(", "));
  }
}

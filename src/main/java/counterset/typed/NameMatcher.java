package counterset.typed;

import counterset.ask.Keys;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Need;
import counterset.model.Part;
import counterset.spelling.Slips;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds the exercise that a name stands for, however it was typed. */
final class NameMatcher {

  /** From this on a name lacks a word of weight, and nothing else may be nearly as good. */
  private static final int DOUBTFUL = 3;

  private static final int MARGIN = 2;

  /**
   * What was found.
   *
   * @param exercises one if it is clear, several if it may be any of them, none if it is none
   */
  record Found(List<Exercise> exercises, int cost) {

    boolean isClear() {
      return exercises.size() == 1;
    }

    Exercise exercise() {
      return exercises.get(0);
    }
  }

  private final List<Entry> entries = new ArrayList<>();
  private final EquipmentWords equipment;
  private final Catalogue catalogue;
  private final Shorthand shorthand;

  NameMatcher(Catalogue catalogue, Shorthand shorthand, EquipmentWords equipment) {
    this.catalogue = catalogue;
    this.shorthand = shorthand;
    this.equipment = equipment;
    catalogue.exercises().values().forEach(this::add);
  }

  private void add(Exercise exercise) {
    names(exercise).forEach(name -> entries.add(new Entry(exercise, keys(name), Set.of())));
    Exercise root = catalogue.exercises().get(exercise.root());
    Set<String> more = needs(exercise);
    if (root != null && !root.id().equals(exercise.id())) {
      more.removeAll(needs(root));
      if (!more.isEmpty()) {
        names(root).forEach(name -> entries.add(new Entry(exercise, keys(name), more)));
      }
    }
  }

  private static Set<String> names(Exercise exercise) {
    Set<String> names = new LinkedHashSet<>(List.of(exercise.name(), exercise.id()));
    names.addAll(exercise.names());
    return names;
  }

  private List<String> keys(String name) {
    return Keys.ofName(name).stream()
        .flatMap(key -> shorthand.of(key).stream())
        .filter(key -> !NoteWords.SMALL.contains(key))
        .toList();
  }

  static Set<String> needs(Exercise exercise) {
    return exercise.needs().stream()
        .map(Need::equipment)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Finds a name among the exercises of a part of the session. */
  Found find(Wanted wanted) {
    if (wanted.words().isEmpty()) {
      return new Found(List.of(), 0);
    }
    Map<Exercise, Integer> costs = new LinkedHashMap<>();
    for (Entry entry : entries) {
      if (entry.exercise().part() == wanted.part()) {
        OptionalInt cost = Fit.cost(wanted, entry, equipment);
        cost.ifPresent(it -> costs.merge(entry.exercise(), it, Math::min));
      }
    }
    if (costs.isEmpty()) {
      return new Found(List.of(), 0);
    }
    int least = costs.values().stream().mapToInt(Integer::intValue).min().getAsInt();
    int most = least < DOUBTFUL ? least : least + MARGIN - 1;
    List<Exercise> near =
        costs.entrySet().stream()
            .filter(it -> it.getValue() <= most)
            .sorted(Map.Entry.comparingByValue())
            .map(Map.Entry::getKey)
            .toList();
    List<Exercise> best = near.stream().filter(exercise -> costs.get(exercise) == least).toList();
    boolean oneRoot = near.stream().map(Exercise::root).distinct().count() == 1;
    List<Exercise> chosen = oneRoot ? best : narrowed(near, wanted);
    if (chosen.stream().map(Exercise::root).distinct().count() == 1) {
      chosen = List.of(preferred(chosen, wanted));
    }
    return chosen.size() == 1
        ? new Found(List.of(equipped(chosen.get(0), wanted)), least)
        : new Found(chosen, least);
  }

  /** Of several different exercises those that the equipment at hand and the sides speak for. */
  private List<Exercise> narrowed(List<Exercise> near, Wanted wanted) {
    List<Exercise> possible = near.stream().filter(it -> isAtHand(it, wanted)).toList();
    boolean told = wanted.limited() || !wanted.known().isEmpty();
    List<Exercise> some = possible.isEmpty() || !told ? near : possible;
    List<Exercise> sided =
        some.stream().filter(it -> it.isUnilateral() == wanted.oneSided()).toList();
    return wanted.oneSided() && !sided.isEmpty() ? sided : some;
  }

  private boolean isAtHand(Exercise exercise, Wanted wanted) {
    return needs(exercise).stream()
        .allMatch(id -> equipment.isThere(id) || wanted.known().contains(id));
  }

  /** Of several ways of doing one exercise: with what is at hand, sides as named, the plainest. */
  private Exercise preferred(List<Exercise> variants, Wanted wanted) {
    return variants.stream()
        .min(
            Comparator.comparing((Exercise it) -> !isAtHand(it, wanted))
                .thenComparing(it -> it.isUnilateral() != wanted.oneSided())
                .thenComparing(it -> !it.id().equals(it.root()))
                .thenComparing(it -> it.needs().size()))
        .orElseThrow();
  }

  /** The way of doing it that fits the mass, what is strapped on, or what there is instead. */
  private Exercise equipped(Exercise exercise, Wanted wanted) {
    boolean bare = exercise.needs().stream().allMatch(need -> need.load().isEmpty());
    if (wanted.loaded() && bare && exercise.part() == Part.MAIN) {
      Optional<Exercise> loaded =
          variants(exercise).stream()
              .filter(it -> it.needs().stream().anyMatch(need -> need.load().isPresent()))
              .min(Comparator.comparing((Exercise it) -> !isAtHand(it, wanted)));
      if (loaded.isPresent()) {
        return loaded.get();
      }
    }
    return suited(exercise, wanted);
  }

  private Exercise suited(Exercise exercise, Wanted wanted) {
    Set<String> needs = needs(exercise);
    boolean named =
        needs.stream().anyMatch(wanted::mentions)
            || wanted.words().stream()
                .anyMatch(word -> !equipment.named(word.key(), exercise).isEmpty());
    Set<String> withWorn = new LinkedHashSet<>(needs);
    withWorn.addAll(wanted.worn());
    if (!withWorn.equals(needs) && exercise.allowsWorn().stream().noneMatch(wanted.worn()::contains)
        || !withWorn.equals(needs) && needs.isEmpty()) {
      return variants(exercise).stream()
          .filter(it -> needs(it).equals(withWorn))
          .findFirst()
          .orElse(exercise);
    }
    if (named || !wanted.limited() || isAtHand(exercise, wanted)) {
      return exercise;
    }
    return variants(exercise).stream()
        .filter(it -> isAtHand(it, wanted) && sameHold(it, exercise))
        .min(Comparator.comparing((Exercise it) -> !it.family().equals(exercise.family())))
        .orElse(exercise);
  }

  /** Whether both load the client, so that one may stand for the other. */
  private boolean sameHold(Exercise one, Exercise other) {
    return needs(one).stream().allMatch(equipment::carries)
        == needs(other).stream().allMatch(equipment::carries);
  }

  private List<Exercise> variants(Exercise exercise) {
    return catalogue.exercises(exercise.part()).stream()
        .filter(it -> it.root().equals(exercise.root()) && it.sides() == exercise.sides())
        .toList();
  }

  /** The names of all ways of doing an exercise. */
  List<String> waysOf(Exercise exercise) {
    return catalogue.exercises(exercise.part()).stream()
        .filter(it -> it.root().equals(exercise.root()))
        .map(Exercise::name)
        .toList();
  }

  /** The names that come nearest, best first, at most four. */
  List<String> nearest(Wanted wanted) {
    record Near(String name, int shared, int apart) {}
    String typed = wanted.words().stream().map(Word::key).collect(Collectors.joining(" "));
    List<Near> near = new ArrayList<>();
    for (Entry entry : entries) {
      if (entry.exercise().part() == wanted.part() && entry.must().isEmpty()) {
        int shared =
            (int)
                wanted.words().stream()
                    .filter(
                        word -> entry.keys().stream().anyMatch(key -> Slips.only(word.key(), key)))
                    .count();
        String name = String.join(" ", entry.keys());
        if (shared > 0 || Slips.only(typed, name)) {
          near.add(new Near(entry.exercise().name(), shared, Slips.between(typed, name)));
        }
      }
    }
    near.sort(
        Comparator.comparingInt((Near it) -> -it.shared())
            .thenComparingInt(Near::apart)
            .thenComparing(Near::name));
    return near.stream().map(Near::name).distinct().limit(4).toList();
  }
}

package counterset.catalogue;

import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.Exercise;
import counterset.model.MovementPattern;
import counterset.model.Region;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Checks that all references of a catalogue lead somewhere and make sense; finds all faults in one
 * go.
 */
final class Integrity {

  private final Catalogue base;
  private final Sheets sheets;

  Integrity(Catalogue base, Sheets sheets) {
    this.base = base;
    this.sheets = sheets;
  }

  void check() {
    unique("muscle", base.muscles().keySet(), sheets.muscles());
    unique("equipment", base.equipment().keySet(), sheets.equipment());
    unique("limitation", base.limitations().keySet(), sheets.limitations());
    unique("trait", Set.of(), sheets.traits().stream().toList());
    unique("movement pattern", Set.of(), sheets.patterns().stream().toList());
    unique("region or muscle", Set.of(), sheets.regions().stream().toList());
    unique("exercise", base.exercises().keySet(), sheets.exercises());
    unique("figure", Set.of(), sheets.figures());
    sheets.equipment().forEach(sheet -> sheet.entries().forEach(Integrity::equipment));
    sheets.muscles().forEach(sheet -> sheet.ids().forEach(Integrity::region));
    if (sheets.complete()) {
      references();
    }
  }

  private void references() {
    Set<String> muscles = Sheets.ids(base.muscles().keySet(), sheets.muscles());
    MuscleRules.check(sheets.muscles(), muscles);
    Optional<Set<String>> traits = traits();
    traits.ifPresent(
        known ->
            entries(sheets.limitations())
                .forEach(limitation -> known(limitation, "avoidTraits", "trait", known)));
    ExerciseRules rules =
        new ExerciseRules(
            muscles,
            Sheets.ids(base.equipment().keySet(), sheets.equipment()),
            byId(base.equipment().values(), sheets.equipment(), Equipment::id),
            Sheets.ids(base.exercises().keySet(), sheets.exercises()),
            byId(base.exercises().values(), sheets.exercises(), Exercise::id),
            traits);
    entries(sheets.exercises()).forEach(rules::check);
    Set<String> patterns =
        Sheets.ids(
            base.wants().patterns().stream().map(MovementPattern::id).toList(),
            sheets.patterns().stream().toList());
    WantRules.check(sheets.patterns(), sheets.regions(), patterns, muscles);
    entries(sheets.limitations())
        .forEach(limitation -> known(limitation, "favours", "movement pattern", patterns));
    Set<String> figures = Sheets.ids(figuresOfBase(), sheets.figures());
    entries(sheets.exercises()).forEach(exercise -> exercise.at("figure").id("figure", figures));
  }

  private Set<String> figuresOfBase() {
    return base.exercises().values().stream()
        .flatMap(exercise -> exercise.figure().stream())
        .collect(Collectors.toSet());
  }

  /**
   * The traits that may be used; empty where any may. What adds to a catalogue may use those of the
   * catalogue.
   */
  private Optional<Set<String>> traits() {
    if (sheets.traits().isEmpty() && base.exercises().isEmpty()) {
      return Optional.empty();
    }
    Set<String> used =
        Stream.concat(
                base.limitations().values().stream()
                    .flatMap(limitation -> limitation.avoidTraits().stream()),
                base.exercises().values().stream().flatMap(exercise -> exercise.traits().stream()))
            .collect(Collectors.toSet());
    return Optional.of(Sheets.ids(used, sheets.traits().stream().toList()));
  }

  static void known(Entry<?> entry, String field, String kind, Set<String> known) {
    entry.at(field).elements().forEach(element -> element.id(kind, known));
  }

  private static void unique(String kind, Set<String> base, List<? extends Sheet<?>> sheets) {
    Map<String, String> seen = new HashMap<>();
    base.forEach(id -> seen.put(id, "the catalogue that is added to"));
    for (Sheet<?> sheet : sheets) {
      for (Entry<String> id : sheet.ids()) {
        String other = seen.putIfAbsent(id.value(), id.at().place());
        if (other != null) {
          id.at()
              .fault(
                  "The "
                      + kind
                      + " ("
                      + id.value()
                      + ") is there already, in "
                      + other
                      + "; give it another id.");
        }
      }
    }
  }

  private static void region(Entry<String> id) {
    boolean taken =
        id.value().equals("whole")
            || Arrays.stream(Region.values()).anyMatch(region -> region.id().equals(id.value()));
    if (taken) {
      id.at()
          .fault("The muscle (" + id.value() + ") has the name of a region; give it another id.");
    }
  }

  private static void equipment(Entry<Equipment> entry) {
    Equipment item = entry.value();
    if (item.alwaysThere() && item.putOnSeconds() + item.takeOffSeconds() > 0) {
      entry
          .at("kind")
          .fault("Fixed equipment (" + item.id() + ") is always there; its seconds must be 0.");
    }
  }

  private static <T> Stream<Entry<T>> entries(List<Sheet<T>> sheets) {
    return sheets.stream().flatMap(sheet -> sheet.entries().stream());
  }

  private static <T> Map<String, T> byId(
      Collection<T> base, List<Sheet<T>> sheets, Function<T, String> id) {
    return Stream.concat(base.stream(), entries(sheets).map(Entry::value))
        .collect(Collectors.toMap(id, value -> value, (first, second) -> first));
  }
}

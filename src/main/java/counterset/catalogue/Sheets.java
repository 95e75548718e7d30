package counterset.catalogue;

import counterset.json.InvalidInputException;
import counterset.json.Violation;
import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.Exercise;
import counterset.model.Figure;
import counterset.model.Limitation;
import counterset.model.MovementPattern;
import counterset.model.Muscle;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * All files of a catalogue as values with their places.
 *
 * @param complete whether every file could be read, so that an id that is in none of them does not
 *     exist
 */
record Sheets(
    List<Sheet<Muscle>> muscles,
    List<Sheet<Equipment>> equipment,
    List<Sheet<Limitation>> limitations,
    Optional<Sheet<String>> traits,
    Optional<Sheet<MovementPattern>> patterns,
    Optional<Sheet<PatternShares>> regions,
    List<Sheet<Exercise>> exercises,
    List<Sheet<Figure>> figures,
    boolean complete) {

  static Sheets validated(CatalogueFiles files) {
    return new Sheets(
        files.muscles().map(file -> Sheet.validated(file, "muscles", Elements::muscle)).stream()
            .toList(),
        files
            .equipment()
            .map(file -> Sheet.validated(file, "equipment", Elements::equipment))
            .stream()
            .toList(),
        files
            .limitations()
            .map(file -> Sheet.validated(file, "limitations", Elements::limitation))
            .stream()
            .toList(),
        files.traits().map(file -> Sheet.validated(file, "traits", Elements::trait)),
        files.patterns().map(file -> Sheet.validated(file, "patterns", WantElements::pattern)),
        files.regions().map(file -> Sheet.validated(file, "regions", WantElements::shares)),
        files.exercises().stream()
            .map(file -> Sheet.validated(file, "exercises", ExerciseElement::read))
            .toList(),
        files.figures().stream()
            .map(file -> Sheet.validated(file, "figures", FigureElement::read))
            .toList(),
        files.faults().isEmpty());
  }

  static Sheets trusted(CatalogueFiles files) {
    return new Sheets(
        files.muscles().map(file -> Sheet.trusted(file, Elements::muscle)).stream().toList(),
        files.equipment().map(file -> Sheet.trusted(file, Elements::equipment)).stream().toList(),
        files.limitations().map(file -> Sheet.trusted(file, Elements::limitation)).stream()
            .toList(),
        Optional.empty(),
        files.patterns().map(file -> Sheet.trusted(file, WantElements::pattern)),
        files.regions().map(file -> Sheet.trusted(file, WantElements::shares)),
        files.exercises().stream().map(file -> Sheet.trusted(file, ExerciseElement::read)).toList(),
        List.of(),
        true);
  }

  /** All faults, file by file. */
  List<Violation> violations() {
    List<Sheet<?>> all = new ArrayList<>(muscles);
    all.addAll(equipment);
    all.addAll(limitations);
    traits.ifPresent(all::add);
    patterns.ifPresent(all::add);
    regions.ifPresent(all::add);
    all.addAll(exercises);
    all.addAll(figures);
    return all.stream().flatMap(sheet -> sheet.violations().stream()).toList();
  }

  /** The values of a base with these after them. */
  Catalogue joinedTo(Catalogue base) {
    InvalidInputException.throwIfAny(violations());
    return Catalogue.of(
        Symmetry.completed(join(base.muscles().values(), muscles)),
        join(base.equipment().values(), equipment),
        join(base.limitations().values(), limitations),
        join(base.exercises().values(), exercises),
        WantElements.joined(base.wants(), patterns, regions));
  }

  /** The ids of a base and of some files. */
  static Set<String> ids(Collection<String> base, Collection<? extends Sheet<?>> sheets) {
    Set<String> ids = new LinkedHashSet<>(base);
    sheets.forEach(sheet -> sheet.ids().forEach(id -> ids.add(id.value())));
    return ids;
  }

  private static <T> List<T> join(Collection<T> base, List<Sheet<T>> sheets) {
    return Stream.concat(base.stream(), sheets.stream().flatMap(sheet -> sheet.values().stream()))
        .toList();
  }
}

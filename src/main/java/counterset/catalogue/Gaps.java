package counterset.catalogue;

import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.Exercise;
import counterset.model.Limitation;
import counterset.model.Muscle;
import counterset.model.Need;
import counterset.model.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Where the catalogue has few main exercises: one cell for every default target, equipment and
 * limitation.
 *
 * <p>Variants of one exercise count once, because a session has no two of them.
 *
 * @param cells by muscle group, then equipment, then limitation, each in the order of the catalogue
 */
public record Gaps(List<Cell> cells) {

  /** The count from which a cell is not thin: one exercise to do, and two to change to. */
  public static final int ENOUGH = 3;

  /**
   * The number of exercises for one case.
   *
   * @param muscle the primary muscle group, by id
   * @param equipment the only equipment that they need, by id; empty for those that need none
   * @param limitation the limitation that allows them, by id; empty for none
   */
  public record Cell(
      String muscle, Optional<String> equipment, Optional<String> limitation, int count) {}

  public Gaps {
    cells = List.copyOf(cells);
  }

  /**
   * Counts the exercises of a catalogue. Fixed equipment counts as none; a mere comfort is left
   * out.
   */
  public static Gaps of(Catalogue catalogue) {
    List<Optional<String>> equipment = new ArrayList<>();
    equipment.add(Optional.empty());
    catalogue.equipment().values().stream()
        .filter(item -> !item.alwaysThere() && item.comfortIn().isEmpty())
        .map(Equipment::id)
        .forEach(id -> equipment.add(Optional.of(id)));
    List<Optional<Limitation>> limitations = new ArrayList<>();
    limitations.add(Optional.empty());
    catalogue
        .limitations()
        .values()
        .forEach(limitation -> limitations.add(Optional.of(limitation)));
    List<Cell> cells = new ArrayList<>();
    for (Muscle muscle : catalogue.muscles().values()) {
      if (muscle.defaultTarget()) {
        for (Optional<String> item : equipment) {
          List<Exercise> usable = usable(catalogue, muscle, item);
          limitations.forEach(limitation -> cells.add(cell(muscle, item, limitation, usable)));
        }
      }
    }
    return new Gaps(cells);
  }

  /** The cells without any exercise. */
  public List<Cell> empty() {
    return cells.stream().filter(cell -> cell.count() == 0).toList();
  }

  /** The cells with some exercises, but fewer than enough. */
  public List<Cell> thin() {
    return cells.stream().filter(cell -> cell.count() > 0 && cell.count() < ENOUGH).toList();
  }

  /** The equipment that an exercise needs and that is not always there. */
  static Set<String> handled(Catalogue catalogue, Exercise exercise) {
    return exercise.needs().stream()
        .map(Need::equipment)
        .filter(id -> !catalogue.equipment().get(id).alwaysThere())
        .collect(Collectors.toSet());
  }

  private static List<Exercise> usable(Catalogue catalogue, Muscle muscle, Optional<String> item) {
    Set<String> only = item.map(Set::of).orElse(Set.of());
    return catalogue.exercises(Part.MAIN).stream()
        .filter(exercise -> exercise.primary().contains(muscle.id()))
        .filter(exercise -> handled(catalogue, exercise).equals(only))
        .toList();
  }

  private static Cell cell(
      Muscle muscle,
      Optional<String> item,
      Optional<Limitation> limitation,
      List<Exercise> usable) {
    long count =
        usable.stream()
            .filter(exercise -> limitation.map(rules -> rules.allows(exercise)).orElse(true))
            .map(Exercise::root)
            .distinct()
            .count();
    return new Cell(muscle.id(), item, limitation.map(Limitation::id), Math.toIntExact(count));
  }
}

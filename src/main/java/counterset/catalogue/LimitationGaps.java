package counterset.catalogue;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Limitation;
import counterset.model.Muscle;
import counterset.model.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * How many main exercises with home equipment are left to those with one limitation, or with two:
 * one cell for every default target.
 *
 * <p>Variants of one exercise count once, because a session has no two of them.
 *
 * @param cells first those of single limitations, then those of pairs, each by limitation and
 *     target in the order of the catalogue
 */
public record LimitationGaps(List<Cell> cells) {

  /** The fewest exercises for one limitation. */
  public static final int ENOUGH_FOR_ONE = 4;

  /** The fewest exercises for two limitations at once. */
  public static final int ENOUGH_FOR_TWO = 2;

  /**
   * The number of exercises for one case.
   *
   * @param limitations one or two, by id
   * @param muscle the primary muscle group, by id
   */
  public record Cell(List<String> limitations, String muscle, int count) {

    public Cell {
      limitations = List.copyOf(limitations);
    }

    /** The fewest that are enough. */
    public int enough() {
      return limitations.size() == 1 ? ENOUGH_FOR_ONE : ENOUGH_FOR_TWO;
    }
  }

  public LimitationGaps {
    cells = List.copyOf(cells);
  }

  /** Counts the exercises of a catalogue. */
  public static LimitationGaps of(Catalogue catalogue) {
    List<Exercise> home =
        catalogue.exercises(Part.MAIN).stream().filter(HomeEquipment::isEnoughFor).toList();
    List<String> targets =
        catalogue.muscles().values().stream()
            .filter(Muscle::defaultTarget)
            .map(Muscle::id)
            .toList();
    List<Limitation> limitations = List.copyOf(catalogue.limitations().values());
    List<Cell> singles = new ArrayList<>();
    List<Cell> pairs = new ArrayList<>();
    for (int i = 0; i < limitations.size(); i++) {
      Limitation one = limitations.get(i);
      List<Exercise> left = home.stream().filter(one::allows).toList();
      targets.forEach(muscle -> singles.add(cell(List.of(one.id()), muscle, left)));
      for (Limitation other : limitations.subList(i + 1, limitations.size())) {
        List<Exercise> both = left.stream().filter(other::allows).toList();
        targets.forEach(muscle -> pairs.add(cell(List.of(one.id(), other.id()), muscle, both)));
      }
    }
    return new LimitationGaps(Stream.concat(singles.stream(), pairs.stream()).toList());
  }

  /** The cells with fewer exercises than are enough. */
  public List<Cell> missing() {
    return cells.stream().filter(cell -> cell.count() < cell.enough()).toList();
  }

  private static Cell cell(List<String> limitations, String muscle, List<Exercise> left) {
    long count =
        left.stream()
            .filter(exercise -> exercise.primary().contains(muscle))
            .map(Exercise::root)
            .distinct()
            .count();
    return new Cell(limitations, muscle, Math.toIntExact(count));
  }
}

package counterset.referee;

import counterset.model.Keep;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * All ways to fill a superset that break no rule, holes in any position: they part what tires the
 * same, and work on the floor in the last position is what others come after.
 */
final class Fillings {

  private final Problem problem;
  private final List<Choice> choices;
  private final FillingCost cost;
  private final int perSuperset;
  private final long worn;
  private List<Filling> free;

  Fillings(Problem problem, List<Choice> choices, FillingCost cost) {
    this.problem = problem;
    this.choices = choices;
    this.cost = cost;
    this.perSuperset = problem.clock().perSuperset();
    this.worn = choices.stream().mapToLong(c -> c.keeps() & ~c.needs()).reduce(0, (a, b) -> a | b);
  }

  /**
   * Those with at least one exercise.
   *
   * @param superset from 0
   */
  List<Filling> of(int superset) {
    List<Keep> keeps =
        problem.keep().stream().filter(keep -> keep.at().superset() == superset + 1).toList();
    if (keeps.isEmpty()) {
      if (free == null) {
        free = enumerate(List.of());
      }
      return free;
    }
    return enumerate(keeps);
  }

  /** Those of one list of exercises by position, null for a hole. */
  List<Filling> of(List<Choice> places) {
    List<Filling> fillings = new ArrayList<>();
    Choice[] array = places.toArray(new Choice[0]);
    boolean repeats =
        IntStream.range(0, array.length)
            .anyMatch(i -> array[i] != null && !isNew(array[i], array, i));
    if (!repeats && sidesAreWhole(places)) {
      add(places, fillings);
    }
    return fillings;
  }

  private List<Filling> enumerate(List<Keep> keeps) {
    List<Filling> fillings = new ArrayList<>();
    extend(new Choice[perSuperset], 0, keeps, fillings);
    return fillings;
  }

  private void extend(Choice[] places, int position, List<Keep> keeps, List<Filling> fillings) {
    if (position == perSuperset) {
      List<Choice> list = Collections.unmodifiableList(Arrays.asList(places.clone()));
      if (list.stream().anyMatch(c -> c != null) && sidesAreWhole(list)) {
        add(list, fillings);
      }
      return;
    }
    Optional<String> kept =
        keeps.stream()
            .filter(keep -> keep.at().position() == position)
            .map(Keep::exercise)
            .findFirst();
    for (Choice choice : choices) {
      if (kept.map(choice.exercise().id()::equals).orElse(true)
          && isNew(choice, places, position)) {
        places[position] = choice;
        extend(places, position + 1, keeps, fillings);
      }
    }
    if (kept.isEmpty()) {
      places[position] = null;
      extend(places, position + 1, keeps, fillings);
    }
  }

  /** Whether no variant of it stands there already, its own other side apart. */
  private static boolean isNew(Choice choice, Choice[] places, int position) {
    for (int earlier = 0; earlier < position; earlier++) {
      if (places[earlier] != null
          && places[earlier].exercise().root().equals(choice.exercise().root())
          && !(choice.oneSided() && choice.equals(places[earlier]))) {
        return false;
      }
    }
    return true;
  }

  /** A one-sided exercise stands in both places of a pair, or nowhere. */
  private boolean sidesAreWhole(List<Choice> places) {
    return places.stream().noneMatch(choice -> choice != null && choice.oneSided())
        || perSuperset == 2 && places.get(0) != null && places.get(0).equals(places.get(1));
  }

  /** Once for each set of worn items that may be on although the first exercise needs none. */
  private void add(List<Choice> places, List<Filling> fillings) {
    Choice first = places.stream().filter(c -> c != null).findFirst().orElseThrow();
    long optional = worn & first.keeps() & ~first.needs();
    long some = optional;
    while (true) {
      cost.of(places, first.needs() | some).ifPresent(fillings::add);
      if (some == 0) {
        break;
      }
      some = some - 1 & optional;
    }
  }
}

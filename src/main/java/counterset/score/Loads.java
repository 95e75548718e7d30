package counterset.score;

import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.Exercise;
import counterset.model.Need;
import counterset.model.Owned;
import counterset.model.Problem;
import java.util.List;
import java.util.function.Predicate;

/**
 * What of the client's equipment there is to lift. A chair carries the client and is no load; but
 * who has nothing to lift puts the chair to use instead. A mat is never more than a comfort.
 */
final class Loads {

  private final List<String> ids;

  Loads(Problem problem, Catalogue catalogue) {
    List<Equipment> owned =
        problem.equipment().stream().map(Owned::id).map(catalogue.equipment()::get).toList();
    List<String> lifted = ids(owned, equipment -> !equipment.support());
    this.ids = lifted.isEmpty() ? ids(owned, e -> e.comfortIn().isEmpty()) : lifted;
  }

  private static List<String> ids(List<Equipment> owned, Predicate<Equipment> which) {
    return owned.stream().filter(which).map(Equipment::id).toList();
  }

  /** Whether there is nothing. */
  boolean isEmpty() {
    return ids.isEmpty();
  }

  /** Whether an exercise uses any of it, or there is none. */
  boolean areUsedIn(Exercise exercise) {
    return ids.isEmpty() || exercise.needs().stream().map(Need::equipment).anyMatch(ids::contains);
  }
}

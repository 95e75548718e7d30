package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Item;
import java.util.List;

/** The items that exercises need. */
public final class Items {

  private Items() {}

  /** What an exercise needs, that which is always there included. */
  public static List<Item> of(Exercise exercise, Catalogue catalogue) {
    return exercise.needs().stream()
        .map(
            need ->
                new Item(catalogue.equipment().get(need.equipment()), need.count(), need.load()))
        .toList();
  }

  /** What an exercise needs and somebody has to handle. */
  static List<Item> handled(Exercise exercise, Catalogue catalogue) {
    return of(exercise, catalogue).stream()
        .filter(item -> !item.equipment().alwaysThere())
        .toList();
  }
}

package counterset.report.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.explain.Items;
import counterset.model.Catalogue;
import counterset.model.Item;
import counterset.model.Superset;
import java.util.List;

/** Equipment as it is handled. */
final class ItemJson {

  private ItemJson() {}

  /** What the exercises of a superset need, each item once, in order. */
  static List<Item> of(Superset superset, Catalogue catalogue) {
    return superset.distinct().stream()
        .flatMap(exercise -> Items.of(exercise, catalogue).stream())
        .distinct()
        .toList();
  }

  static void write(Item item, ObjectNode json) {
    json.put("equipment", item.equipment().id()).put("count", item.count());
    item.load().ifPresent(load -> json.put("load", load.id()));
  }
}

package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.Exercise;
import counterset.model.Fetch;
import counterset.model.Item;
import counterset.model.Need;
import counterset.model.Owned;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What to fetch before a session, in the order of its first use. */
final class FetchList {

  private FetchList() {}

  static List<Fetch> of(Problem problem, Session session, Catalogue catalogue) {
    Map<Item, List<Integer>> uses = new LinkedHashMap<>();
    for (Superset superset : session.supersets()) {
      for (Exercise exercise : superset.distinct()) {
        for (Need need : exercise.needs()) {
          Equipment equipment = catalogue.equipment().get(need.equipment());
          use(uses, new Item(equipment, need.count(), need.load()), superset);
        }
        comforts(problem, catalogue, exercise).forEach(item -> use(uses, item, superset));
      }
    }
    List<Need> first = session.work().findFirst().map(Exercise::needs).orElse(List.of());
    List<Fetch> list = new ArrayList<>();
    uses.forEach((item, supersets) -> list.add(new Fetch(item, supersets, isNeeded(first, item))));
    return list;
  }

  private static void use(Map<Item, List<Integer>> uses, Item item, Superset superset) {
    List<Integer> supersets = uses.computeIfAbsent(item, key -> new ArrayList<>());
    if (!supersets.contains(superset.number())) {
      supersets.add(superset.number());
    }
  }

  /** Equipment of the client that only makes an exercise more comfortable, such as a mat. */
  private static List<Item> comforts(Problem problem, Catalogue catalogue, Exercise exercise) {
    return problem.equipment().stream()
        .map(Owned::id)
        .map(catalogue.equipment()::get)
        .filter(equipment -> equipment.comfortIn().contains(exercise.position()))
        .map(equipment -> new Item(equipment, 1, Optional.empty()))
        .toList();
  }

  private static boolean isNeeded(List<Need> needs, Item item) {
    return needs.contains(new Need(item.equipment().id(), item.count(), item.load()));
  }
}

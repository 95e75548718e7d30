package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.EquipmentKind;
import counterset.model.Load;
import counterset.model.Owned;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.function.Consumer;

/** Equipment that may be added, or left out. */
final class EquipmentChanges {

  private final Problem problem;
  private final Names names;
  private final List<Change> changes = new ArrayList<>();

  private EquipmentChanges(Problem problem, Catalogue catalogue) {
    this.problem = problem;
    this.names = new Names(catalogue);
  }

  /** One of each kind that is not there, and two of what is held, in the order of the catalogue. */
  static List<Change> more(Problem problem, Catalogue catalogue) {
    EquipmentChanges all = new EquipmentChanges(problem, catalogue);
    catalogue.equipment().values().forEach(all::moreOf);
    return all.changes;
  }

  /** Without one that is there. */
  static List<Change> less(Problem problem, Catalogue catalogue) {
    EquipmentChanges all = new EquipmentChanges(problem, catalogue);
    all.leaveOut();
    return all.changes;
  }

  private void leaveOut() {
    for (Owned owned : problem.equipment()) {
      String id = owned.id();
      add(
          id,
          "leave out the " + (owned.count() == 1 ? names.equipment(id) : names.many(id)),
          draft -> draft.equipment.remove(owned));
    }
  }

  private void moreOf(Equipment equipment) {
    String id = equipment.id();
    List<Owned> owned = problem.equipment().stream().filter(o -> o.id().equals(id)).toList();
    if (equipment.alwaysThere()) {
      return;
    }
    boolean held = equipment.kind() == EquipmentKind.HELD;
    int most = owned.stream().mapToInt(Owned::count).max().orElse(0);
    if (owned.isEmpty()) {
      add(id, "add " + names.one(id), draft -> draft.equipment.add(some(id, 1)));
    } else if (owned.stream().anyMatch(o -> o.loads().size() < Load.values().length)) {
      add(
          id,
          "add " + names.many(id) + " of other weights",
          draft -> replace(draft, id, Math.max(most, 1)));
    }
    if (held && most < 2) {
      add(id, "have two " + names.many(id), draft -> replace(draft, id, 2));
    }
  }

  private static void replace(ProblemDraft draft, String id, int count) {
    draft.equipment.removeIf(owned -> owned.id().equals(id));
    draft.equipment.add(some(id, count));
  }

  private static Owned some(String id, int count) {
    return new Owned(id, count, List.of(), EnumSet.allOf(Load.class));
  }

  private void add(String topic, String phrase, Consumer<ProblemDraft> edit) {
    changes.add(new Change(topic, phrase, edit));
  }
}

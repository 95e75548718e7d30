package counterset.ask;

import counterset.model.Catalogue;
import counterset.model.Load;
import counterset.model.Owned;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Joins what an ask says of equipment in several places. What differs in count stays apart. */
final class OwnedList {

  private OwnedList() {}

  static List<Owned> of(Catalogue catalogue, AskDraft draft) {
    List<AskDraft.Item> items = new ArrayList<>();
    for (AskDraft.Item item : draft.equipment) {
      if (!catalogue.equipment().get(item.owned().id()).alwaysThere()) {
        join(items, item, draft);
      }
    }
    return items.stream().map(AskDraft.Item::owned).toList();
  }

  private static void join(List<AskDraft.Item> items, AskDraft.Item item, AskDraft draft) {
    Owned next = item.owned();
    for (int i = 0; i < items.size(); i++) {
      Owned known = items.get(i).owned();
      if (!known.id().equals(next.id())) {
        continue;
      }
      if (known.count() == next.count()) {
        items.set(i, new AskDraft.Item(both(known, next), items.get(i).span()));
        return;
      }
      if (known.kg().equals(next.kg()) && known.loads().equals(next.loads())) {
        draft.fault(
            item.span(),
            "Two different counts: "
                + items.get(i).span().quoted()
                + " and "
                + item.span().quoted()
                + ". Keep one of them.");
        return;
      }
    }
    items.add(item);
  }

  private static Owned both(Owned a, Owned b) {
    Set<Load> loads = EnumSet.copyOf(a.loads());
    loads.addAll(b.loads());
    return new Owned(
        a.id(),
        a.count(),
        Stream.concat(a.kg().stream(), b.kg().stream()).distinct().toList(),
        loads);
  }
}

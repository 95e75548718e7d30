package counterset.typed;

import java.util.ArrayList;
import java.util.List;

/** Makes supersets of the lines that stand together. */
final class Layout {

  /** What a superset holds at most. */
  static final int MOST = 3;

  /**
   * The items of one superset by position; a one-sided exercise stands at two.
   *
   * @param group where it was typed
   */
  record Places(Group group, List<Item> items) {

    int size() {
      return items.size();
    }
  }

  private final int size;
  private final List<Places> supersets = new ArrayList<>();
  private final boolean apart;
  private boolean paired;

  /**
   * A layout.
   *
   * @param size of a superset where nothing tells them apart
   */
  Layout(List<Group> groups, int size) {
    this.size = size;
    this.apart =
        size == 1
            || groups.stream()
                .anyMatch(it -> it.whole && !it.headed && it.key.isEmpty() && it.onOneLine());
    groups.forEach(this::add);
  }

  List<Places> supersets() {
    return supersets;
  }

  /** Whether lines had to be counted off into supersets. */
  boolean isPaired() {
    return paired;
  }

  private void add(Group group) {
    if (apart && !group.whole) {
      alone(group);
      return;
    }
    if (group.whole || group.items.size() <= MOST) {
      supersets.add(new Places(group, both(group.items)));
      return;
    }
    paired = true;
    List<Item> next = new ArrayList<>();
    List<Item> items = group.items;
    for (int i = 0; i < items.size(); i++) {
      Item item = items.get(i);
      if (item.exercise().isUnilateral() && size == 2) {
        close(group, next);
        boolean other = i + 1 < items.size() && isOtherSide(item, items.get(i + 1));
        supersets.add(new Places(group, both(other ? items.subList(i, i + 2) : List.of(item))));
        i += other ? 1 : 0;
      } else {
        next.add(item);
        if (next.size() == size) {
          close(group, next);
        }
      }
    }
    close(group, next);
  }

  /** Where supersets of two stand on one line, every other line is one of its own. */
  private void alone(Group group) {
    List<Item> items = group.items;
    for (int i = 0; i < items.size(); i++) {
      boolean other = i + 1 < items.size() && isOtherSide(items.get(i), items.get(i + 1));
      supersets.add(new Places(group, both(items.subList(i, other ? i + 2 : i + 1))));
      i += other ? 1 : 0;
    }
  }

  private void close(Group group, List<Item> next) {
    if (!next.isEmpty()) {
      supersets.add(new Places(group, List.copyOf(next)));
      next.clear();
    }
  }

  private static boolean isOtherSide(Item one, Item other) {
    return one.exercise().equals(other.exercise())
        && one.side.isPresent()
        && other.side.isPresent()
        && !one.side.equals(other.side);
  }

  /** A one-sided exercise that stands alone is done on both sides, unless only one is named. */
  private static List<Item> both(List<Item> items) {
    boolean alone =
        items.size() == 1 && items.get(0).exercise().isUnilateral() && items.get(0).side.isEmpty();
    return alone ? List.of(items.get(0), items.get(0)) : List.copyOf(items);
  }
}

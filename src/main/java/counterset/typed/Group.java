package counterset.typed;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** The lines of one superset, or of several that nothing tells apart. Lives for one reading. */
final class Group {

  final String key;
  final boolean whole;
  final List<Item> items = new ArrayList<>();
  OptionalInt rounds = OptionalInt.empty();
  Source roundsAt;
  int roundsStart;

  /** Whether a heading opened it, which holds until the next heading or blank line. */
  boolean headed;

  /**
   * A group.
   *
   * @param key of its label; empty text if it has none
   * @param whole whether it is one superset however many lines it has
   */
  Group(String key, boolean whole) {
    this.key = key;
    this.whole = whole;
  }

  /** Whether it has several exercises on the line where it begins. */
  boolean onOneLine() {
    return items.stream().filter(it -> it.source.number() == items.get(0).source.number()).count()
        > 1;
  }

  boolean isEmpty() {
    return items.isEmpty();
  }
}

package counterset.model;

import java.util.List;
import java.util.Set;

/**
 * A kind of equipment.
 *
 * @param putOnSeconds seconds to pick it up, strap it on or lay it out
 * @param takeOffSeconds seconds to put it down, strap it off or clear it away
 * @param support whether it carries the client, or a hand or foot, and adds no load (a chair)
 * @param comfortIn positions that it only makes more comfortable (a mat); an exercise in one of
 *     them puts it to use without needing it
 * @param names further words that a coach may use for it
 */
public record Equipment(
    String id,
    String name,
    EquipmentKind kind,
    int putOnSeconds,
    int takeOffSeconds,
    boolean support,
    Set<Position> comfortIn,
    List<String> names) {

  public Equipment {
    if (putOnSeconds < 0 || takeOffSeconds < 0) {
      throw new IllegalArgumentException(
          "The seconds of equipment (" + id + ") must not be negative.");
    }
    comfortIn = Ordered.set(comfortIn);
    names = List.copyOf(names);
  }

  /** Whether it is there for everyone without being listed or handled. */
  public boolean alwaysThere() {
    return kind == EquipmentKind.FIXED;
  }
}

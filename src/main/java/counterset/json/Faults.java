package counterset.json;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Collects the faults of one document while it is read.
 *
 * <p>What the schema found is settled first: further faults of the same value would only say it
 * again.
 */
public final class Faults {

  private final JsonDocument document;
  private final List<Violation> violations = new ArrayList<>();
  private final Set<String> settled = new HashSet<>();

  public Faults(JsonDocument document) {
    this.document = document;
  }

  /** Takes over the faults that the schema found. */
  public void settle(List<Violation> found) {
    violations.addAll(found);
    found.forEach(violation -> settled.add(violation.pointer()));
  }

  /** Adds a fault unless the schema has found one at the same value. */
  public void add(String pointer, String message) {
    if (!settled.contains(pointer)) {
      violations.add(document.violation(pointer, message));
    }
  }

  /** The document that the faults belong to. */
  public JsonDocument document() {
    return document;
  }

  /** Whether there is a fault at the value or within it. */
  public boolean within(String pointer) {
    return !violations.isEmpty()
        && violations.stream()
            .map(Violation::pointer)
            .anyMatch(place -> place.equals(pointer) || place.startsWith(pointer + "/"));
  }

  /** All faults in the order of the text. */
  public List<Violation> list() {
    return violations.stream().sorted(order(document)).distinct().toList();
  }

  /** Throws all faults, if there are any. */
  public void throwIfAny() {
    InvalidInputException.throwIfAny(list());
  }

  static Comparator<Violation> order(JsonDocument document) {
    return Comparator.comparingInt(violation -> document.order(violation.pointer()));
  }
}

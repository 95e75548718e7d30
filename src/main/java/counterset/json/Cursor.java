package counterset.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import counterset.model.Identified;
import counterset.spelling.Nearest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A value of a document with its place, read as one type or another.
 *
 * <p>A value of the wrong type becomes a fault and reads as empty, so that reading goes on and
 * finds the others.
 */
public final class Cursor {

  private final Faults faults;
  private final Cursor parent;
  private final String step;
  private final JsonNode node;

  private Cursor(Faults faults, Cursor parent, String step, JsonNode node) {
    this.faults = faults;
    this.parent = parent;
    this.step = step;
    this.node = node;
  }

  /** The value that a pointer leads to; empty text for the whole document. */
  public static Cursor at(Faults faults, String pointer) {
    return new Cursor(faults, null, pointer, faults.document().at(pointer));
  }

  /** A property; absent if there is none or this is no object. */
  public Cursor field(String name) {
    JsonNode child = node.get(name);
    return new Cursor(faults, this, name, child == null ? MissingNode.getInstance() : child);
  }

  /** Whether the document has this value. */
  public boolean isPresent() {
    return !node.isMissingNode();
  }

  /** Whether this is a text. */
  public boolean isText() {
    return node.isTextual();
  }

  /** The elements of a list; none if it is absent. */
  public List<Cursor> elements() {
    List<Cursor> elements = new ArrayList<>(node.size());
    if (fits(node.isArray(), "a list")) {
      for (int i = 0; i < node.size(); i++) {
        elements.add(new Cursor(faults, this, Integer.toString(i), node.get(i)));
      }
    }
    return elements;
  }

  /** The properties of an object in their order; none if it is absent. */
  public Map<String, Cursor> entries() {
    Map<String, Cursor> entries = new LinkedHashMap<>();
    if (fits(node.isObject(), "an object")) {
      node.fieldNames().forEachRemaining(name -> entries.put(name, field(name)));
    }
    return entries;
  }

  /** A text, if there is one. */
  public Optional<String> text() {
    return fits(node.isTextual(), "text") ? Optional.of(node.textValue()) : Optional.empty();
  }

  /** The texts of a list. */
  public List<String> texts() {
    List<String> texts = new ArrayList<>();
    for (Cursor element : elements()) {
      element.text().ifPresent(texts::add);
    }
    return texts;
  }

  /** A whole number, if there is one. */
  public Optional<Integer> integer() {
    return isWhole(node.canConvertToInt()) ? Optional.of(node.intValue()) : Optional.empty();
  }

  /** A whole number of up to 64 bits, if there is one. */
  public Optional<Long> whole() {
    return isWhole(node.canConvertToLong()) ? Optional.of(node.longValue()) : Optional.empty();
  }

  /** A number, if there is one. */
  public Optional<Double> number() {
    return fits(node.isNumber(), "a number") ? Optional.of(node.doubleValue()) : Optional.empty();
  }

  /** Yes or no, if there is one. */
  public Optional<Boolean> bool() {
    return fits(node.isBoolean(), "true or false")
        ? Optional.of(node.booleanValue())
        : Optional.empty();
  }

  /** The constant of an enum whose id this is, if there is one. */
  public <E extends Enum<E> & Identified> Optional<E> constant(Class<E> type) {
    for (E constant : type.getEnumConstants()) {
      if (constant.id().equals(node.textValue())) {
        return Optional.of(constant);
      }
    }
    if (isPresent()) {
      id(
          SchemaWords.name(pointer()),
          Arrays.stream(type.getEnumConstants()).map(Identified::id).toList());
    }
    return Optional.empty();
  }

  /** An id out of those known of its kind; anything else is a fault that names the nearest one. */
  public Optional<String> id(String kind, Collection<String> known) {
    Optional<String> id = text();
    return id.isPresent() && isKnown(kind, id.get(), known) ? id : Optional.empty();
  }

  /**
   * Whether a name, such as that of this property, is among those known of its kind; otherwise adds
   * a fault here.
   */
  public boolean isKnown(String kind, String name, Collection<String> known) {
    boolean right = known.contains(name);
    if (!right) {
      fault("The " + kind + " (" + Shown.of(name) + ") is not known." + Nearest.maybe(name, known));
    }
    return right;
  }

  /** Adds a fault of this value. */
  public void fault(String message) {
    faults.add(pointer(), message);
  }

  /** Whether a fault of this value, or of something in it, has been found. */
  public boolean isFaulty() {
    return faults.within(pointer());
  }

  /** The JSON pointer of this value. */
  public String pointer() {
    return parent == null ? step : parent.pointer() + "/" + escape(step);
  }

  /** The file and line, as messages about another place name it. */
  public String place() {
    OptionalInt line = faults.document().line(pointer());
    return faults.document().file() + (line.isPresent() ? ":" + line.getAsInt() : "");
  }

  static String escape(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }

  private boolean isWhole(boolean inRange) {
    return fits(inRange && node.canConvertToExactIntegral(), "a whole number");
  }

  private boolean fits(boolean right, String expected) {
    if (isPresent() && !right) {
      fault(
          "The "
              + SchemaWords.name(pointer())
              + " ("
              + Shown.of(node)
              + ") must be "
              + expected
              + ".");
    }
    return right;
  }
}

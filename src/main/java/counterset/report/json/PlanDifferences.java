package counterset.report.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.JsonDocument;
import counterset.json.Shown;
import counterset.json.Violation;
import counterset.model.Catalogue;
import counterset.model.Plan;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a plan file says otherwise than its session works out to.
 *
 * <p>What the file leaves out is not held against it, nor are words: what is said and why may be
 * put better by a later version.
 */
public final class PlanDifferences {

  /** What is decided or only told, not worked out. */
  private static final Set<String> GIVEN = Set.of("plan", "problem", "solver");

  private static final Set<String> WORDS = Set.of("say", "why");

  private final JsonDocument document;
  private final List<Violation> differences = new ArrayList<>();

  private PlanDifferences(JsonDocument document) {
    this.document = document;
  }

  /**
   * All differences, in the order of the plan.
   *
   * @param document the file
   * @param plan what its session works out to
   */
  public static List<Violation> of(JsonDocument document, Plan plan, Catalogue catalogue) {
    PlanDifferences result = new PlanDifferences(document);
    ObjectNode right = PlanJson.write(plan, catalogue);
    for (Iterator<String> names = right.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      JsonNode said = document.tree().get(name);
      if (said != null && !GIVEN.contains(name)) {
        result.compare("/" + name, said, right.get(name));
      }
    }
    return result.differences;
  }

  private void compare(String pointer, JsonNode said, JsonNode right) {
    if (right.isObject() && said.isObject()) {
      compareObjects(pointer, said, right);
    } else if (right.isArray() && said.isArray()) {
      compareArrays(pointer, said, right);
    } else if (!isSame(said, right)) {
      add(pointer, "says " + Shown.of(said) + ", works out as " + Shown.of(right));
    }
  }

  private void compareObjects(String pointer, JsonNode said, JsonNode right) {
    for (Map.Entry<String, JsonNode> property : right.properties()) {
      JsonNode other = said.get(property.getKey());
      if (other != null && !WORDS.contains(property.getKey())) {
        compare(pointer + "/" + property.getKey(), other, property.getValue());
      }
    }
    for (Map.Entry<String, JsonNode> property : said.properties()) {
      if (!right.has(property.getKey())) {
        add(
            pointer + "/" + property.getKey(),
            "says " + Shown.of(property.getValue()) + ", but there is no such thing here");
      }
    }
  }

  private void compareArrays(String pointer, JsonNode said, JsonNode right) {
    if (said.size() != right.size()) {
      add(pointer, "has " + said.size() + " entries, works out as " + right.size());
    }
    for (int i = 0; i < Math.min(said.size(), right.size()); i++) {
      compare(pointer + "/" + i, said.get(i), right.get(i));
    }
  }

  private static boolean isSame(JsonNode said, JsonNode right) {
    return said.isNumber() && right.isNumber()
        ? said.decimalValue().compareTo(right.decimalValue()) == 0
        : said.equals(right);
  }

  private void add(String pointer, String message) {
    differences.add(document.violation(pointer, message + "."));
  }
}

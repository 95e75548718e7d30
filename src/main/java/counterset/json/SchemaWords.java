package counterset.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import counterset.spelling.Nearest;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * Our own plain words for what the schema library finds: the value in parentheses, what is allowed,
 * the remedy.
 */
final class SchemaWords {

  private final JsonDocument document;
  private final String prefix;
  private final JsonDocument schema;

  SchemaWords(JsonDocument document, String prefix, JsonDocument schema) {
    this.document = document;
    this.prefix = prefix;
    this.schema = schema;
  }

  Violation violation(Error error) {
    String pointer = prefix + error.getInstanceLocation();
    return switch (error.getKeyword()) {
      case "additionalProperties" -> document.violation(child(pointer, error), unknown(error));
      case "required" -> document.violation(child(pointer, error), missing(error));
      case "uniqueItems" -> twice(pointer, error.getInstanceNode());
      default ->
          document.violation(
              pointer, sentence("The " + name(pointer) + value(error) + " " + rule(error)));
    };
  }

  /**
   * The name of the nearest property around a value: an element is called by the name of its list.
   */
  static String name(String pointer) {
    String[] steps = pointer.split("/");
    for (int i = steps.length - 1; i > 0; i--) {
      if (!steps[i].matches("[0-9]*")) {
        return Shown.of(steps[i].replace("~1", "/").replace("~0", "~"));
      }
    }
    return steps.length > 1 ? "element" : "whole file";
  }

  private static String sentence(String text) {
    return text.endsWith("?") ? text : text + ".";
  }

  private static String child(String pointer, Error error) {
    return pointer + "/" + Cursor.escape(error.getProperty());
  }

  private static String missing(Error error) {
    return "The property (" + Shown.of(error.getProperty()) + ") is missing.";
  }

  private String unknown(Error error) {
    List<String> known = names(parent(error).path("properties"));
    String near = Nearest.maybe(error.getProperty(), known);
    String allowed = near.isEmpty() ? " Known: " + String.join(", ", known) + "." : near;
    return "The property (" + Shown.of(error.getProperty()) + ") is not known here." + allowed;
  }

  private JsonNode parent(Error error) {
    String keyword = error.getSchemaLocation().getFragment().toString();
    return schema.at(keyword.substring(0, keyword.lastIndexOf('/')));
  }

  private Violation twice(String pointer, JsonNode list) {
    Set<JsonNode> seen = new HashSet<>();
    for (int i = 0; i < list.size(); i++) {
      if (!seen.add(list.get(i))) {
        String message =
            "The " + name(pointer) + " (" + Shown.of(list.get(i)) + ") is listed twice; keep one.";
        return document.violation(pointer + "/" + i, message);
      }
    }
    return document.violation(pointer, "The " + name(pointer) + " must not list anything twice.");
  }

  private static String value(Error error) {
    JsonNode node = error.getInstanceNode();
    return node.isContainerNode() && !error.getKeyword().equals("type")
        ? ""
        : " (" + Shown.of(node) + ")";
  }

  private String rule(Error error) {
    String limit = Shown.of(error.getSchemaNode());
    return switch (error.getKeyword()) {
      case "type" -> "must be " + types(error.getSchemaNode());
      case "enum" -> "must be one of " + choices(error);
      case "const" -> "must be " + limit;
      case "minimum" -> "must be at least " + limit;
      case "maximum" -> "must be at most " + limit;
      case "exclusiveMinimum" -> "must be above " + limit;
      case "exclusiveMaximum" -> "must be below " + limit;
      case "minItems", "minProperties" -> "must have " + limit + " or more elements";
      case "maxItems", "maxProperties" -> "must have no more than " + limit + " elements";
      case "minLength" -> "must have " + limit + " or more characters";
      case "maxLength" -> "must have no more than " + limit + " characters";
      case "pattern" ->
          "must be " + parent(error).path("description").asText("text that fits " + limit);
      default -> error.getMessage();
    };
  }

  private static String types(JsonNode types) {
    return types.isArray()
        ? stream(types).map(SchemaWords::type).collect(Collectors.joining(" or "))
        : type(types);
  }

  private static String type(JsonNode type) {
    return switch (type.asText()) {
      case "integer" -> "a whole number";
      case "number" -> "a number";
      case "string" -> "text";
      case "boolean" -> "true or false";
      case "array" -> "a list in square brackets";
      case "object" -> "an object in braces";
      default -> type.asText();
    };
  }

  private static String choices(Error error) {
    List<String> known = stream(error.getSchemaNode()).map(JsonNode::asText).toList();
    String near = Nearest.maybe(error.getInstanceNode().asText(), known);
    return String.join(", ", known) + (near.isEmpty() ? "" : "." + near);
  }

  private static Stream<JsonNode> stream(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false);
  }

  private static List<String> names(JsonNode object) {
    return object.propertyStream().map(Map.Entry::getKey).toList();
  }
}

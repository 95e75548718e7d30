package counterset.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.Map;

/** Trees from and to tokens. The depth of what is read is bounded by the parser. */
final class Trees {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private Trees() {}

  /** The value that begins at the current token. */
  static JsonNode read(JsonParser parser) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(parser);
      case START_ARRAY -> array(parser);
      case VALUE_STRING -> NODES.textNode(parser.getText());
      case VALUE_NUMBER_INT -> integer(parser);
      case VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDoubleValue());
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      case VALUE_NULL -> NODES.nullNode();
      default ->
          throw new IllegalStateException(
              "The token (" + parser.currentToken() + ") begins no value.");
    };
  }

  private static JsonNode object(JsonParser parser) throws IOException {
    ObjectNode object = NODES.objectNode();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      parser.nextToken();
      object.set(name, read(parser));
    }
    return object;
  }

  private static JsonNode array(JsonParser parser) throws IOException {
    ArrayNode array = NODES.arrayNode();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      array.add(read(parser));
    }
    return array;
  }

  private static JsonNode integer(JsonParser parser) throws IOException {
    return switch (parser.getNumberType()) {
      case INT -> NODES.numberNode(parser.getIntValue());
      case LONG -> NODES.numberNode(parser.getLongValue());
      default -> NODES.numberNode(parser.getBigIntegerValue());
    };
  }

  static void write(JsonNode node, JsonGenerator out) throws IOException {
    if (node.isObject()) {
      out.writeStartObject();
      for (Map.Entry<String, JsonNode> entry : node.properties()) {
        out.writeFieldName(entry.getKey());
        write(entry.getValue(), out);
      }
      out.writeEndObject();
    } else if (node.isArray()) {
      out.writeStartArray();
      for (JsonNode element : node) {
        write(element, out);
      }
      out.writeEndArray();
    } else {
      scalar(node, out);
    }
  }

  private static void scalar(JsonNode node, JsonGenerator out) throws IOException {
    switch (node.getNodeType()) {
      case STRING -> out.writeString(node.textValue());
      case BOOLEAN -> out.writeBoolean(node.booleanValue());
      case NUMBER -> out.writeNumber(node.asText());
      default -> out.writeNull();
    }
  }
}

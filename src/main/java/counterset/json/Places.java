package counterset.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;

/**
 * Where the values of a document stand: line and rank by pointer. Made only when a fault has to be
 * placed.
 */
final class Places {

  private record Place(int order, OptionalInt line) {}

  private final Map<String, Place> places = new HashMap<>();

  private Places() {}

  /** The text is known to be well-formed. */
  static Places ofText(String text) {
    Places result = new Places();
    try (JsonParser parser = Json.FACTORY.createParser(text)) {
      while (parser.nextToken() != null) {
        String pointer = parser.getParsingContext().pathAsPointer().toString();
        result.add(pointer, OptionalInt.of(parser.currentTokenLocation().getLineNr()));
      }
      return result;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Places ofTree(JsonNode tree) {
    Places result = new Places();
    result.walk("", tree);
    return result;
  }

  OptionalInt line(String pointer) {
    return find(pointer).line();
  }

  int order(String pointer) {
    return find(pointer).order();
  }

  private Place find(String pointer) {
    String rest = pointer;
    while (!places.containsKey(rest) && !rest.isEmpty()) {
      rest = rest.substring(0, rest.lastIndexOf('/'));
    }
    return places.getOrDefault(rest, new Place(0, OptionalInt.empty()));
  }

  private void walk(String pointer, JsonNode node) {
    add(pointer, OptionalInt.empty());
    if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        walk(pointer + "/" + i, node.get(i));
      }
    }
    node.properties()
        .forEach(entry -> walk(pointer + "/" + Cursor.escape(entry.getKey()), entry.getValue()));
  }

  private void add(String pointer, OptionalInt line) {
    places.putIfAbsent(pointer, new Place(places.size(), line));
  }
}

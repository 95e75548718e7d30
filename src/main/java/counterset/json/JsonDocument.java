package counterset.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.OptionalInt;

/** A JSON tree with the name of its file and the place of every value. */
public final class JsonDocument {

  private final String file;
  private final JsonNode tree;
  private final String text;
  private Places places;

  private JsonDocument(String file, JsonNode tree, String text) {
    this.file = file;
    this.tree = tree;
    this.text = text;
  }

  /** A tree that was built in memory: its values have no lines. */
  public static JsonDocument of(String file, JsonNode tree) {
    return new JsonDocument(file, tree, "");
  }

  /**
   * Reads one JSON value.
   *
   * @throws InvalidInputException with one violation if the text is empty, malformed or more than
   *     one value
   */
  public static JsonDocument parse(String file, String text) {
    if (text.isBlank()) {
      throw InvalidInputException.of(file, "The file is empty; it must hold one JSON value.");
    }
    try (JsonParser parser = Json.FACTORY.createParser(text)) {
      return new JsonDocument(file, read(file, parser), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode read(String file, JsonParser parser) throws IOException {
    boolean complete = false;
    try {
      parser.nextToken();
      JsonNode tree = Trees.read(parser);
      complete = true;
      if (parser.nextToken() != null) {
        throw fault(file, parser, Malformed.trailing(parser.currentTokenLocation().getColumnNr()));
      }
      return tree;
    } catch (JsonProcessingException e) {
      int column = parser.currentLocation().getColumnNr();
      throw fault(
          file, parser, complete ? Malformed.trailing(column) : Malformed.explain(e, column));
    }
  }

  private static InvalidInputException fault(String file, JsonParser parser, String message) {
    OptionalInt line = OptionalInt.of(parser.currentLocation().getLineNr());
    return new InvalidInputException(List.of(new Violation(file, "", line, message)));
  }

  /** The file as the user named it. */
  public String file() {
    return file;
  }

  /** The value of the whole document. */
  public JsonNode tree() {
    return tree;
  }

  /** The value that a pointer leads to; a missing node if there is none. */
  public JsonNode at(String pointer) {
    return tree.at(JsonPointer.compile(pointer));
  }

  /**
   * The line of a value (of its name, if it has one), or of the nearest value around it that
   * exists.
   */
  public OptionalInt line(String pointer) {
    return places().line(pointer);
  }

  /** A violation at a value of this document. */
  public Violation violation(String pointer, String message) {
    return new Violation(file, pointer, line(pointer), message);
  }

  /** The rank of a value in the order of the text. */
  int order(String pointer) {
    return places().order(pointer);
  }

  private Places places() {
    if (places == null) {
      places = text.isEmpty() ? Places.ofTree(tree) : Places.ofText(text);
    }
    return places;
  }
}

package counterset.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/**
 * The one configured reader and the one way of printing JSON: two spaces a level, {@code \n}, the
 * same bytes always.
 *
 * <p>Trees go through Jackson's streaming core directly: loading its object mapper would take
 * longer than reading the whole catalogue.
 */
public final class Json {

  static final int DEEPEST = 60;

  /** Reads strictly: a property written twice in one object is an error. */
  static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
          .build();

  private Json() {}

  /** An empty object to fill; its properties keep their order. */
  public static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  /** An empty array to fill. */
  public static ArrayNode array() {
    return JsonNodeFactory.instance.arrayNode();
  }

  /** The text of a tree on several lines, with a line break at the end. */
  public static String pretty(JsonNode tree) {
    StringWriter text = new StringWriter();
    try (JsonGenerator generator = FACTORY.createGenerator(text)) {
      generator.setPrettyPrinter(printer());
      Trees.write(tree, generator);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.append('\n').toString();
  }

  /** The text of a tree on one line, without a line break. */
  public static String line(JsonNode tree) {
    StringWriter text = new StringWriter();
    try (JsonGenerator generator = FACTORY.createGenerator(text)) {
      Trees.write(tree, generator);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static PrettyPrinter printer() {
    Separators separators =
        Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Spacing.AFTER)
            .withObjectEmptySeparator("")
            .withArrayEmptySeparator("");
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    return new DefaultPrettyPrinter(separators)
        .withObjectIndenter(indenter)
        .withArrayIndenter(indenter);
  }
}

package counterset.json;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import counterset.spelling.Nearest;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** The JSON Schemas of all file kinds (draft 2020-12), shipped as class-path resources. */
public final class Schemas {

  private static final List<String> NAMES =
      List.of(
          "muscles",
          "equipment",
          "limitations",
          "traits",
          "patterns",
          "regions",
          "exercises",
          "figures",
          "problem",
          "plan",
          "week",
          "week-plan",
          "block-plan",
          "swap",
          "journal",
          "comparison");

  private static final String ID = "urn:counterset:schema:";

  private static final Map<String, Loaded> LOADED = new ConcurrentHashMap<>();

  private record Loaded(JsonDocument document, Schema schema) {}

  private Schemas() {}

  /** The names of all schemas, in the order in which they are listed. */
  public static List<String> names() {
    return NAMES;
  }

  /** The text of a schema. */
  public static String text(String name) {
    if (!NAMES.contains(name)) {
      throw new IllegalArgumentException(
          "The schema (" + name + ") is not known." + Nearest.maybe(name, NAMES));
    }
    try (InputStream in = Schemas.class.getResourceAsStream("/schema/" + name + ".schema.json")) {
      if (in == null) {
        throw new IllegalStateException("The schema (" + name + ") is missing from this program.");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All faults of a document by a schema, in the order of the text. */
  public static List<Violation> validate(JsonDocument document, String name) {
    return validate(document, "", name);
  }

  /** All faults of the part of a document that a pointer leads to, in the order of the text. */
  public static List<Violation> validate(JsonDocument document, String pointer, String name) {
    Loaded loaded = LOADED.computeIfAbsent(name, Schemas::load);
    SchemaWords words = new SchemaWords(document, pointer, loaded.document());
    List<Error> errors = loaded.schema().validate(document.at(pointer));
    Set<String> wrongTypes =
        errors.stream().filter(Schemas::isType).map(Schemas::place).collect(Collectors.toSet());
    return errors.stream()
        .filter(error -> isType(error) || !wrongTypes.contains(place(error)))
        .map(words::violation)
        .sorted(Faults.order(document))
        .distinct()
        .toList();
  }

  /** A schema that another one refers to by its id; null for all that is none of ours. */
  private static String referredTo(String id) {
    String name = id.startsWith(ID) ? id.substring(ID.length()) : "";
    return NAMES.contains(name) ? text(name) : null;
  }

  private static boolean isType(Error error) {
    return error.getKeyword().equals("type");
  }

  private static String place(Error error) {
    return error.getInstanceLocation().toString();
  }

  private static Loaded load(String name) {
    JsonDocument document = JsonDocument.parse(name + ".schema.json", text(name));
    SchemaRegistry registry =
        SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(Schemas::referredTo));
    return new Loaded(document, registry.getSchema(document.tree()));
  }
}

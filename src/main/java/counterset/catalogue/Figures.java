package counterset.catalogue;

import counterset.json.InvalidInputException;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import counterset.model.Figure;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The figures of a catalogue, which only pictures need, and which are therefore not part of what
 * every command reads.
 */
public final class Figures {

  private Figures() {}

  /** The figures inside the program, by id. Read once. */
  public static Map<String, Figure> embedded() {
    return Embedded.FIGURES;
  }

  private static final class Embedded {

    static final Map<String, Figure> FIGURES =
        Collections.unmodifiableMap(byId(EmbeddedFiles.figures()));
  }

  /**
   * The figures of a directory that has been checked as a catalogue, by id.
   *
   * @throws InvalidInputException if a file has changed so that it cannot be read any more
   */
  public static Map<String, Figure> load(Path directory) {
    return byId(CatalogueFiles.figures(directory).stream().map(JsonFiles::read).toList());
  }

  private static Map<String, Figure> byId(List<JsonDocument> files) {
    Map<String, Figure> figures = new LinkedHashMap<>();
    for (JsonDocument file : files) {
      Sheet.trusted(file, FigureElement::read)
          .values()
          .forEach(figure -> figures.put(figure.id(), figure));
    }
    return figures;
  }
}

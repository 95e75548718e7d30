package counterset.catalogue;

import counterset.json.InvalidInputException;
import counterset.json.JsonDocument;
import counterset.json.JsonFiles;
import counterset.json.Violation;
import counterset.spelling.Nearest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The files of a catalogue, each a document or absent.
 *
 * @param exercises sorted by file name
 * @param figures sorted by file name
 * @param faults what is wrong with files as such: missing, unreadable, malformed, not known
 */
record CatalogueFiles(
    Optional<JsonDocument> muscles,
    Optional<JsonDocument> equipment,
    Optional<JsonDocument> limitations,
    Optional<JsonDocument> traits,
    Optional<JsonDocument> patterns,
    Optional<JsonDocument> regions,
    List<JsonDocument> exercises,
    List<JsonDocument> figures,
    List<Violation> faults) {

  static final String MUSCLES = "muscles.json";
  static final String EQUIPMENT = "equipment.json";
  static final String LIMITATIONS = "limitations.json";
  static final String TRAITS = "traits.json";
  static final String PATTERNS = "patterns.json";
  static final String REGIONS = "regions.json";
  static final String EXERCISES = "exercises";
  static final String FIGURES = "figures";

  private static final List<String> SINGLE =
      List.of(MUSCLES, EQUIPMENT, LIMITATIONS, TRAITS, PATTERNS, REGIONS);

  /**
   * Reads what a directory has; a complete catalogue may do without traits, patterns and regions.
   */
  static CatalogueFiles in(Path directory, boolean complete) {
    if (!Files.isDirectory(directory)) {
      throw InvalidInputException.of(directory.toString(), "There is no such catalogue directory.");
    }
    List<Violation> faults = new ArrayList<>(strangers(directory));
    Path folder = directory.resolve(EXERCISES);
    List<Path> exercises = list(folder).stream().filter(CatalogueFiles::isJson).toList();
    if (complete && exercises.isEmpty()) {
      faults.add(
          Violation.of(
              folder.toString(),
              "The catalogue has no exercises; put at least one .json file here."));
    }
    if (!complete
        && exercises.isEmpty()
        && SINGLE.stream().noneMatch(name -> Files.exists(directory.resolve(name)))) {
      faults.add(
          Violation.of(
              directory.toString(),
              "There is nothing to add; it may have "
                  + String.join(", ", SINGLE)
                  + " and the folder exercises."));
    }
    return new CatalogueFiles(
        read(directory.resolve(MUSCLES), complete, faults),
        read(directory.resolve(EQUIPMENT), complete, faults),
        read(directory.resolve(LIMITATIONS), complete, faults),
        read(directory.resolve(TRAITS), false, faults),
        read(directory.resolve(PATTERNS), false, faults),
        read(directory.resolve(REGIONS), false, faults),
        readAll(exercises, faults),
        readAll(figures(directory), faults),
        faults);
  }

  /** The files of figures of a directory, sorted by name. */
  static List<Path> figures(Path directory) {
    return list(directory.resolve(FIGURES)).stream().filter(CatalogueFiles::isJson).toList();
  }

  private static List<JsonDocument> readAll(List<Path> paths, List<Violation> faults) {
    return paths.stream().flatMap(path -> read(path, true, faults).stream()).toList();
  }

  private static Optional<JsonDocument> read(Path path, boolean required, List<Violation> faults) {
    if (!required && Files.notExists(path)) {
      return Optional.empty();
    }
    try {
      return Optional.of(JsonFiles.read(path));
    } catch (InvalidInputException e) {
      faults.addAll(e.violations());
      return Optional.empty();
    }
  }

  private static List<Violation> strangers(Path directory) {
    return list(directory).stream()
        .filter(path -> isJson(path) && !SINGLE.contains(path.getFileName().toString()))
        .map(
            path ->
                Violation.of(
                    path.toString(),
                    "The file is no part of a catalogue; exercises belong in the folder exercises."
                        + Nearest.maybe(path.getFileName().toString(), SINGLE)))
        .toList();
  }

  private static boolean isJson(Path path) {
    return path.getFileName().toString().endsWith(".json")
        && !path.getFileName().toString().startsWith(".");
  }

  private static List<Path> list(Path directory) {
    if (!Files.isDirectory(directory)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(directory)) {
      return files.sorted(Comparator.comparing(path -> path.getFileName().toString())).toList();
    } catch (IOException e) {
      throw InvalidInputException.of(directory.toString(), "The directory cannot be read.");
    }
  }
}

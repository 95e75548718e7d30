package counterset.quality;

import counterset.quality.Reference.Written;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the reference sessions. */
final class References {

  private static final String FILE = "/quality/reference-sessions.md";
  private static final Pattern PLACE =
      Pattern.compile("(?<name>.+?)(?: (?<side>left|right))? \\[(?<with>[^]]+)]");
  private static final List<String> LOADS = List.of("light", "medium", "heavy");
  private static final Map<String, String> EQUIPMENT =
      Map.of(
          "dumbbells", "dumbbell",
          "one dumbbell", "dumbbell",
          "ankle weights", "ankle-weights",
          "loop band", "loop-band",
          "long band", "long-band");

  private References() {}

  /** All of them, in the order of the file. */
  static List<Reference> all() {
    try (InputStream in = References.class.getResourceAsStream(FILE)) {
      return read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Reference> read(String text) {
    String[] parts = text.split("(?m)^## ");
    List<Reference> references = new ArrayList<>();
    for (int number = 1; number < parts.length; number++) {
      references.add(reference(number, parts[number].lines().toList()));
    }
    return List.copyOf(references);
  }

  private static Reference reference(int number, List<String> lines) {
    return new Reference(
        number,
        lines.get(0),
        lines.stream().filter(line -> line.contains(" / ")).map(References::superset).toList(),
        after("why: ", lines),
        List.of(after("never: ", lines).split("; ")));
  }

  private static String after(String key, List<String> lines) {
    return lines.stream()
        .filter(line -> line.startsWith(key))
        .map(line -> line.substring(key.length()))
        .findFirst()
        .orElseThrow();
  }

  private static List<Written> superset(String line) {
    return Arrays.stream(line.split(" / ")).map(References::place).toList();
  }

  private static Written place(String text) {
    Matcher place = PLACE.matcher(text);
    if (!place.matches()) {
      throw new IllegalArgumentException("A place (" + text + ") must end in its equipment.");
    }
    String load = "";
    List<String> equipment = new ArrayList<>();
    for (String word : place.group("with").split(", | \\+ | and ")) {
      if (LOADS.contains(word)) {
        load = word;
      } else if (!word.equals("body")) {
        equipment.add(EQUIPMENT.getOrDefault(word, word));
      }
    }
    String side = place.group("side") == null ? "" : place.group("side");
    return new Written(place.group("name"), side, List.copyOf(equipment), load);
  }
}

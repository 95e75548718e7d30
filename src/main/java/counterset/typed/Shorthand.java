package counterset.typed;

import counterset.spelling.Nearest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What coaches write for short, and small slips. The abbreviations: common practice, no source. */
final class Shorthand {

  private static final Map<String, List<String>> SHORT =
      Map.ofEntries(
          Map.entry("db", List.of("dumbbell")),
          Map.entry("kb", List.of("kettlebell")),
          Map.entry("bw", List.of("bodyweight")),
          Map.entry("aw", List.of("ankle", "weight")),
          Map.entry("rdl", List.of("romanian", "deadlift")),
          Map.entry("dl", List.of("deadlift")),
          Map.entry("ohp", List.of("overhead", "press")),
          Map.entry("sl", List.of("single", "leg")),
          Map.entry("sldl", List.of("single", "leg", "deadlift")),
          Map.entry("bss", List.of("bulgarian", "split", "squat")),
          Map.entry("alt", List.of("alternating")),
          Map.entry("lat", List.of("lateral")),
          Map.entry("bo", List.of("bent", "over")),
          Map.entry("ext", List.of("extension")),
          Map.entry("abd", List.of("abduction")),
          Map.entry("pushup", List.of("push", "up")),
          Map.entry("pressup", List.of("press", "up")),
          Map.entry("situp", List.of("sit", "up")),
          Map.entry("stepup", List.of("step", "up")),
          Map.entry("ham", List.of("hamstring")),
          Map.entry("pu", List.of("push", "up")),
          Map.entry("one", List.of("single")),
          Map.entry("alternate", List.of("alternating")),
          Map.entry("w", List.of("with")));

  private final Set<String> known;
  private final Map<String, List<String>> corrected = new HashMap<>();

  /**
   * Shorthand for one reading.
   *
   * @param known the keys of all words of names
   */
  Shorthand(Set<String> known) {
    this.known = known;
  }

  /** The keys that a key stands for; itself if nothing better is known. */
  List<String> of(String key) {
    List<String> full = SHORT.get(key);
    return full != null ? full : corrected.computeIfAbsent(key, this::corrected);
  }

  private List<String> corrected(String key) {
    if (known.contains(key) || key.length() < 4 || NoteWords.isKnown(key)) {
      return List.of(key);
    }
    List<String> near = Nearest.all(key, known);
    return near.size() == 1 ? near : List.of(key);
  }
}

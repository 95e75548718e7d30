package counterset.spelling;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;

/** Suggestions for words that are not known; upper and lower case are alike. */
public final class Nearest {

  private static final int LONGEST = 80;

  private Nearest() {}

  /** The known words with the fewest {@link Slips}, by the alphabet; none if none is near. */
  public static List<String> all(String word, Collection<String> known) {
    String typed = word.toLowerCase(Locale.ROOT);
    TreeMap<Integer, List<String>> near = new TreeMap<>();
    for (String candidate : known) {
      String lower = candidate.toLowerCase(Locale.ROOT);
      if (Slips.only(typed, lower)) {
        near.computeIfAbsent(Slips.between(typed, lower), slips -> new ArrayList<>())
            .add(candidate);
      }
    }
    return near.isEmpty() ? List.of() : near.firstEntry().getValue().stream().sorted().toList();
  }

  /** The known word that was most likely meant; empty if none is near. */
  public static Optional<String> to(String word, Collection<String> known) {
    return word.isBlank() || word.length() > LONGEST
        ? Optional.empty()
        : all(word, known).stream().findFirst().or(() -> containing(word, known));
  }

  /** {@code Maybe "minutes"?} with a space before it; empty text if no known word is near. */
  public static String maybe(String word, Collection<String> known) {
    return to(word, known).map(near -> " Maybe \"" + near + "\"?").orElse("");
  }

  private static Optional<String> containing(String word, Collection<String> known) {
    String typed = word.toLowerCase(Locale.ROOT);
    return typed.length() < 3
        ? Optional.empty()
        : known.stream()
            .filter(candidate -> candidate.toLowerCase(Locale.ROOT).contains(typed))
            .min(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()));
  }
}

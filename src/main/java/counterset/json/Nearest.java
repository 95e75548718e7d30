package counterset.json;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * Suggestions for words that are not known: the fewest typing slips first, the alphabet breaks
 * ties.
 */
public final class Nearest {

  private static final int LONGEST = 80;

  private record Candidate(String word, int distance) {}

  private Nearest() {}

  /** The known word that was most likely meant; empty if none is near. */
  public static Optional<String> to(String word, Collection<String> known) {
    String typed = word.toLowerCase(Locale.ROOT);
    if (typed.isBlank() || typed.length() > LONGEST) {
      return Optional.empty();
    }
    int allowed = Math.max(1, typed.length() / 3);
    Optional<String> slip =
        known.stream()
            .filter(candidate -> Math.abs(candidate.length() - typed.length()) <= allowed)
            .map(
                candidate ->
                    new Candidate(candidate, distance(typed, candidate.toLowerCase(Locale.ROOT))))
            .filter(candidate -> candidate.distance() <= allowed)
            .min(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::word))
            .map(Candidate::word);
    return slip.or(() -> containing(typed, known));
  }

  /** {@code Maybe "minutes"?} with a space before it; empty text if no known word is near. */
  public static String maybe(String word, Collection<String> known) {
    return to(word, known).map(near -> " Maybe \"" + near + "\"?").orElse("");
  }

  private static Optional<String> containing(String typed, Collection<String> known) {
    return typed.length() < 3
        ? Optional.empty()
        : known.stream()
            .filter(candidate -> candidate.toLowerCase(Locale.ROOT).contains(typed))
            .min(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()));
  }

  /**
   * Insertions, deletions, replacements and swaps of neighbours that turn one word into the other.
   */
  static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + (same ? 0 : 1));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], before[j - 2] + 1);
        }
      }
      int[] spare = before;
      before = last;
      last = row;
      row = spare;
    }
    return last[b.length()];
  }
}

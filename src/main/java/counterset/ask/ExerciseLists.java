package counterset.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads lists of exercises, families and patterns. They go on over commas, since none of these
 * means anything alone.
 */
final class ExerciseLists {

  /** The names found, and the place after the last. */
  record Listed(List<Match> matches, int end) {

    /** The ids of all that the names stand for. */
    List<String> ids() {
      return matches.stream()
          .flatMap(match -> match.ids(Kind.EXERCISE, Kind.FAMILY, Kind.PATTERN).stream())
          .distinct()
          .toList();
    }
  }

  private final Vocabulary vocabulary;

  ExerciseLists(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  static boolean isOne(Match match) {
    boolean more = match.has(Kind.MUSCLE) || match.has(Kind.REGION);
    boolean other = more || match.has(Kind.EQUIPMENT) || match.has(Kind.LIMITATION);
    return !other
        && (match.has(Kind.EXERCISE) || match.has(Kind.FAMILY) || match.has(Kind.PATTERN));
  }

  Optional<Match> one(Words words, int at) {
    return one(vocabulary, words, at);
  }

  static Optional<Match> one(Vocabulary vocabulary, Words words, int at) {
    return vocabulary.match(words, at, Kind.values()).filter(ExerciseLists::isOne);
  }

  /** The list that begins at a place; empty if there is none. */
  Listed read(Words words, int at) {
    List<Match> matches = new ArrayList<>();
    int end = at;
    Match match = one(words, at).orElse(null);
    while (match != null) {
      matches.add(match);
      end = match.end();
      int after = end;
      int next =
          words
              .listGoesOn(end)
              .orElseGet(() -> words.is(after, ",") ? words.skipSmall(after + 1) : after);
      match = next == end ? null : one(words, next).orElse(null);
    }
    return new Listed(List.copyOf(matches), end);
  }
}

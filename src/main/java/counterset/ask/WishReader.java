package counterset.ask;

import counterset.model.Catalogue;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads wishes for exercises: "include goblet squats", "likes hinges", "hates lunges and push-ups".
 */
final class WishReader implements PhraseReader {

  private final Vocabulary vocabulary;
  private final ExerciseLists lists;
  private final ExerciseNames names;

  WishReader(Vocabulary vocabulary, Catalogue catalogue) {
    this.vocabulary = vocabulary;
    this.lists = new ExerciseLists(vocabulary);
    this.names = new ExerciseNames(catalogue);
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    Match verb = vocabulary.match(words, at, Kind.INCLUDE, Kind.LIKES, Kind.DISLIKES).orElse(null);
    if (verb == null) {
      return Optional.empty();
    }
    int first = words.skipSmall(words.skip(verb.end(), ":"));
    ExerciseLists.Listed listed = lists.read(words, first);
    if (listed.matches().isEmpty()) {
      return withoutExercise(words, at, verb, first);
    }
    Span span = words.span(at, listed.end());
    if (verb.has(Kind.INCLUDE)) {
      return Phrase.of(
          listed.end(), draft -> listed.matches().forEach(match -> include(draft, match, span)));
    }
    return put(listed, span, draft -> verb.has(Kind.LIKES) ? draft.likes : draft.dislikes);
  }

  private void include(AskDraft draft, Match match, Span span) {
    names
        .one(match)
        .ifPresentOrElse(
            id -> draft.include.putIfAbsent(id, span),
            () -> draft.fault(span, names.problem(match)));
  }

  private static Optional<Phrase> put(
      ExerciseLists.Listed listed, Span span, Function<AskDraft, Map<String, Span>> list) {
    return Phrase.of(
        listed.end(), draft -> listed.ids().forEach(id -> list.apply(draft).putIfAbsent(id, span)));
  }

  /** To include a muscle group or equipment is no more than to name it. */
  private Optional<Phrase> withoutExercise(Words words, int at, Match verb, int first) {
    Match other =
        vocabulary.match(words, first, Kind.MUSCLE, Kind.REGION, Kind.EQUIPMENT).orElse(null);
    if (verb.has(Kind.INCLUDE)) {
      return other == null && Numeral.read(words, first).isEmpty()
          ? Optional.empty()
          : Phrase.filler(verb.end());
    }
    return other == null
        ? Optional.empty()
        : Phrase.fault(
            words, at, other.end(), "Likes and dislikes are for exercises, families and patterns.");
  }
}

package counterset.ask;

import java.util.Optional;

/** Refuses tracks ("a class, two with sore knees"), which an ask cannot express yet. */
final class TracksReader implements PhraseReader {

  private static final String MESSAGE =
      "Tracks in an ask are not available; put a limitation for the whole session instead.";

  private final Vocabulary vocabulary;

  TracksReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    if (words.is(at, "track")) {
      return Phrase.fault(words, at, at + 1, MESSAGE);
    }
    boolean some =
        words.is(at, "class", "group", "some", "other", "those", "follower", "people", "client")
            && !(words.is(at, "client") && !words.at(at).isPlural());
    int after = some ? at + 1 : Numeral.read(words, at).map(Numeral::end).orElse(at);
    if (after == at || !words.is(after, "with", "have", "ha")) {
      return Optional.empty();
    }
    return vocabulary
        .match(words, words.skipSmall(after + 1), Kind.LIMITATION)
        .flatMap(match -> Phrase.fault(words, at, match.end(), MESSAGE));
  }
}

package counterset.ask;

import java.util.Optional;

/** Reads small words that say nothing. */
final class FillerReader implements PhraseReader {

  private final Vocabulary vocabulary;

  FillerReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    return vocabulary
        .match(words, at, Kind.FILLER)
        .flatMap(
            match ->
                match.id().equals(OwnWords.ASKED)
                    ? Phrase.of(match.end(), draft -> {})
                    : Phrase.filler(match.end()));
  }
}

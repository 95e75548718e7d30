package counterset.ask;

import counterset.model.Identified;
import counterset.model.Pairing;
import java.util.Optional;

/** Reads which exercises a superset should bring together. */
final class PairingReader implements PhraseReader {

  private final Vocabulary vocabulary;

  PairingReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    int name = words.is(at, "pairing") ? words.skip(at + 1, ":", "=") : at;
    return vocabulary
        .match(words, name, Kind.PAIRING)
        .flatMap(
            match -> {
              Pairing pairing = Identified.find(Pairing.class, match.id()).orElseThrow();
              Span span = words.span(at, match.end());
              return Phrase.of(match.end(), draft -> draft.pairing.set(pairing, span, draft));
            });
  }
}

package counterset.ask;

import java.util.Optional;

/** Reads how supersets are made: "tri-sets", "straight sets", "2 rounds". */
final class ShapeReader implements PhraseReader {

  private static final int MAX_ROUNDS = 10;

  private final Vocabulary vocabulary;

  ShapeReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    Match shape = vocabulary.match(words, at, Kind.SHAPE).orElse(null);
    if (shape != null) {
      Span span = words.span(at, shape.end());
      return Phrase.of(
          shape.end(), draft -> draft.perSuperset.set(Integer.valueOf(shape.id()), span, draft));
    }
    Numeral numeral = Numeral.read(words, at).orElse(null);
    if (numeral == null || !words.is(numeral.end(), "round")) {
      return Optional.empty();
    }
    int end = numeral.end() + 1;
    if (!numeral.isWhole(1, MAX_ROUNDS)) {
      return Phrase.fault(
          words,
          at,
          end,
          "The rounds of a superset are a whole number from 1 to " + MAX_ROUNDS + ".");
    }
    Span span = words.span(at, end);
    return Phrase.of(end, draft -> draft.rounds.set(numeral.whole(), span, draft));
  }
}

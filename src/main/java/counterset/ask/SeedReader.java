package counterset.ask;

import java.util.Optional;

/** Reads the seed: "seed 7". */
final class SeedReader implements PhraseReader {

  private static final long MAX_SEED = 999_999_999_999L;

  @Override
  public Optional<Phrase> read(Words words, int at) {
    if (!words.is(at, "seed")) {
      return Optional.empty();
    }
    Numeral numeral = Numeral.read(words, words.skip(at + 1, ":", "=")).orElse(null);
    int end = numeral == null ? at + 1 : numeral.end();
    if (numeral == null || !numeral.isWhole(0, MAX_SEED)) {
      return Phrase.fault(
          words,
          at,
          end,
          "A seed is a whole number from 0 to " + MAX_SEED + ", such as \"seed 7\".");
    }
    Span span = words.span(at, end);
    return Phrase.of(end, draft -> draft.seed.set((long) numeral.value(), span, draft));
  }
}

package counterset.ask;

import java.util.Optional;

/** Reads the level: "level 2", "beginner". */
final class LevelReader implements PhraseReader {

  private final Vocabulary vocabulary;

  LevelReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    if (words.is(at, "level")) {
      int value = words.skip(at + 1, ":", "=");
      Numeral numeral = Numeral.read(words, value).orElse(null);
      if (numeral != null && numeral.isWhole(1, 3)) {
        return level(words, at, numeral.end(), numeral.whole());
      }
      Match match = vocabulary.match(words, value, Kind.LEVEL).orElse(null);
      return match != null
          ? level(words, at, match.end(), Integer.parseInt(match.id()))
          : Phrase.fault(
              words,
              at,
              numeral == null ? at + 1 : numeral.end(),
              "A level is 1 (beginner), 2 (intermediate) or 3 (advanced).");
    }
    return vocabulary
        .match(words, at, Kind.LEVEL)
        .flatMap(
            it ->
                level(
                    words,
                    at,
                    words.is(it.end(), "level") && !hasNumber(words, it) ? it.end() + 1 : it.end(),
                    Integer.parseInt(it.id())));
  }

  private static boolean hasNumber(Words words, Match match) {
    return Numeral.read(words, match.end() + 1).isPresent();
  }

  private static Optional<Phrase> level(Words words, int at, int end, int level) {
    Span span = words.span(at, end);
    return Phrase.of(end, draft -> draft.level.set(level, span, draft));
  }
}

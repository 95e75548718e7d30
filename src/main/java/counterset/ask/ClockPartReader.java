package counterset.ask;

import java.util.Optional;

/** Reads the length of one interval: "40 s work", "rest 20 s", "40 seconds on", "warm-up 3 min". */
final class ClockPartReader implements PhraseReader {

  private static final int LEAST_BARE_SECONDS = 5;

  private final Vocabulary vocabulary;
  private final TimeLengths lengths;

  ClockPartReader(Vocabulary vocabulary, TimeLengths lengths) {
    this.vocabulary = vocabulary;
    this.lengths = lengths;
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    Match named = vocabulary.match(words, at, Kind.CLOCK_PART).orElse(null);
    return named == null ? lengthFirst(words, at) : nameFirst(words, at, named);
  }

  private Optional<Phrase> nameFirst(Words words, int at, Match named) {
    ClockPart part = ClockPart.valueOf(named.id());
    Length length =
        length(words, words.skip(named.end(), ":", "=", "of", "is", "for")).orElse(null);
    if (length != null && (part.isAround() || !isTooLong(length, part))) {
      return phrase(words, at, length, part, length.end());
    }
    if (part == ClockPart.WARM_UP || part == ClockPart.WORK) {
      return Phrase.filler(named.end());
    }
    String example = part.text() + (part.isAround() ? " 2 min" : " 20 s");
    return Phrase.fault(
        words,
        at,
        named.end(),
        "Say how long the " + part.text() + " is, such as \"" + example + "\".");
  }

  private Optional<Phrase> lengthFirst(Words words, int at) {
    Length length = length(words, at).orElse(null);
    if (length == null) {
      return Optional.empty();
    }
    if (!length.coarse() && words.is(length.end(), "on", "off")) {
      ClockPart part = words.is(length.end(), "on") ? ClockPart.WORK : ClockPart.REST;
      return phrase(words, at, length, part, length.end() + 1);
    }
    Match named =
        vocabulary
            .match(words, words.skip(length.end(), "of", "for"), Kind.CLOCK_PART)
            .orElse(null);
    if (named == null) {
      return Optional.empty();
    }
    ClockPart part = ClockPart.valueOf(named.id());
    boolean session = part.isAround() ? isSession(words, length, named) : isTooLong(length, part);
    return session ? Optional.empty() : phrase(words, at, length, part, named.end());
  }

  /** In "20 min work on legs" the minutes are the session. */
  private static boolean isTooLong(Length length, ClockPart part) {
    return length.coarse() && length.seconds() > part.maxSeconds();
  }

  /** In "20 min warm-up 3 min" the longer one is the session. */
  private boolean isSession(Words words, Length length, Match named) {
    return length.coarse()
        && lengths
            .read(words, named.end())
            .map(next -> next.seconds() < length.seconds())
            .orElse(false);
  }

  /** A length with a unit, or a bare number: seconds if it can be. */
  private Optional<Length> length(Words words, int at) {
    Optional<Length> length = lengths.read(words, at);
    if (length.isPresent()) {
      return length;
    }
    return Numeral.read(words, at)
        .filter(numeral -> !words.is(numeral.end(), "/", "-", "x", "kg", "round", "set"))
        .map(numeral -> new Length(numeral.value(), false, numeral.end()));
  }

  private static Optional<Phrase> phrase(
      Words words, int at, Length length, ClockPart part, int end) {
    boolean bare = Numeral.read(words, length.end() - 1).isPresent() && !length.coarse();
    if (bare
        && length.seconds() > 0
        && (part.isAround() || length.seconds() < LEAST_BARE_SECONDS)) {
      return Phrase.fault(
          words, at, end, "Say whether the " + part.text() + " takes minutes or seconds.");
    }
    Span span = words.span(at, end);
    return Phrase.of(end, draft -> draft.clock(part, length.seconds(), span));
  }
}

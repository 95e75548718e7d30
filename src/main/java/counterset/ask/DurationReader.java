package counterset.ask;

import java.util.Optional;

/** Reads the minutes of the session. */
final class DurationReader implements PhraseReader {

  private static final int MAX_MINUTES = 180;

  private final TimeLengths lengths;

  DurationReader(TimeLengths lengths) {
    this.lengths = lengths;
  }

  @Override
  public Optional<Phrase> read(Words words, int at) {
    return lengths.read(words, afterCap(words, at)).flatMap(length -> read(words, at, length));
  }

  private static Optional<Phrase> read(Words words, int at, Length length) {
    int end = length.end();
    if (length.seconds() <= 0) {
      return Phrase.fault(words, at, end, "A session takes at least 1 minute. Say \"20 min\".");
    }
    if (!length.coarse()) {
      return Phrase.fault(
          words,
          at,
          end,
          "Say what these seconds are: work, rest, switch or get ready. The session itself is measured in minutes.");
    }
    double minutes = length.seconds() / 60;
    if (minutes > MAX_MINUTES) {
      return Phrase.fault(
          words,
          at,
          end,
          "A session takes at most " + MAX_MINUTES + " minutes. Name a shorter one.");
    }
    if (minutes != Math.rint(minutes)) {
      return Phrase.fault(
          words,
          at,
          end,
          "A session takes whole minutes. Say " + (int) Math.ceil(minutes) + " min.");
    }
    Span span = words.span(at, end);
    return Phrase.of(end, draft -> draft.minutes.set((int) minutes, span, draft));
  }

  /** The minutes are a cap anyway. */
  private static int afterCap(Words words, int at) {
    if (words.is(at, "no", "not") && words.is(at + 1, "more") && words.is(at + 2, "than")) {
      return at + 3;
    }
    if (words.is(at, "up") && words.is(at + 1, "to")
        || words.is(at, "at") && words.is(at + 1, "most")) {
      return at + 2;
    }
    return words.is(at, "max", "maximum") ? at + 1 : at;
  }
}

package counterset.ask;

import java.util.Optional;

/**
 * Reads lengths of time: "20 min", "half an hour", "three quarters of an hour", "1 hour 10", "2 min
 * 30 s".
 */
final class TimeLengths {

  private static final int LONGEST_MINUTES_WITH_SECONDS = 5;

  private final Vocabulary vocabulary;

  TimeLengths(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  Optional<Length> read(Words words, int at) {
    Optional<Length> fraction = fraction(words, at);
    return fraction.isPresent() ? fraction : plain(words, at);
  }

  /** The seconds in the unit at a place, 0 if there is none. */
  static int unit(Words words, int at) {
    if (words.is(at, "min", "minute", "m")) {
      return 60;
    }
    if (words.is(at, "h", "hr", "hour")) {
      return 3600;
    }
    return words.is(at, "s", "sec", "second") ? 1 : 0;
  }

  private static Optional<Length> fraction(Words words, int at) {
    int start = words.skip(at, "a");
    if (words.is(start, "half")) {
      return part(words, start + 1, 0.5);
    }
    if (words.is(start, "quarter")) {
      return part(words, start + 1, 0.25);
    }
    Numeral top = Numeral.read(words, at).orElse(null);
    if (top == null) {
      return Optional.empty();
    }
    if (words.is(top.end(), "quarter")) {
      return part(words, top.end() + 1, top.value() / 4);
    }
    Numeral below =
        words.is(top.end(), "/") ? Numeral.read(words, top.end() + 1).orElse(null) : null;
    return below != null && top.value() < below.value()
        ? part(words, below.end(), top.value() / below.value())
        : Optional.empty();
  }

  private static Optional<Length> part(Words words, int at, double value) {
    int i = words.skip(at, "of", "a", "an");
    int unit = unit(words, i);
    return unit > 1 ? Optional.of(new Length(value * unit, true, i + 1)) : Optional.empty();
  }

  private Optional<Length> plain(Words words, int at) {
    Numeral amount =
        words.is(at, "a", "an") ? new Numeral(1, at + 1) : Numeral.read(words, at).orElse(null);
    if (amount == null) {
      return Optional.empty();
    }
    boolean half = isAndAHalf(words, amount.end());
    int i = half ? amount.end() + 3 : amount.end();
    int unit = unit(words, i);
    if (unit == 0) {
      return Optional.empty();
    }
    Length length = new Length((amount.value() + (half ? 0.5 : 0)) * unit, unit > 1, i + 1);
    return Optional.of(unit > 1 ? extended(words, length, unit) : length);
  }

  private Length extended(Words words, Length length, int unit) {
    int i = length.end();
    if (isAndAHalf(words, i)) {
      return new Length(length.seconds() + unit / 2, true, i + 3);
    }
    Numeral more = Numeral.read(words, words.skip(i, "and")).orElse(null);
    if (more == null || !more.isWhole(1, 59)) {
      return length;
    }
    int next = unit(words, more.end());
    if (next == unit / 60
        && (unit == 3600 || length.seconds() <= 60 * LONGEST_MINUTES_WITH_SECONDS)) {
      return new Length(length.seconds() + more.value() * next, true, more.end() + 1);
    }
    boolean bare =
        unit == 3600 && next == 0 && !words.is(i, "and") && !countsSomething(words, more.end());
    return bare ? new Length(length.seconds() + more.value() * 60, true, more.end()) : length;
  }

  private boolean countsSomething(Words words, int at) {
    return MassList.isUnit(words, at)
        || words.is(at, "x", "/", "-", "round", "set", "time", "pair", "light", "medium", "heavy")
        || Numeral.read(words, at).isPresent()
        || vocabulary.match(words, at, Kind.EQUIPMENT, Kind.CLOCK_PART).isPresent();
  }

  private static boolean isAndAHalf(Words words, int at) {
    return words.is(at, "and") && words.is(at + 1, "a") && words.is(at + 2, "half");
  }
}

package counterset.ask;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A number in figures or words, and the place after it. */
record Numeral(double value, int end) {

  private static final List<String> UNITS =
      List.of(
          "zero",
          "one",
          "two",
          "three",
          "four",
          "five",
          "six",
          "seven",
          "eight",
          "nine",
          "ten",
          "eleven",
          "twelve",
          "thirteen",
          "fourteen",
          "fifteen",
          "sixteen",
          "seventeen",
          "eighteen",
          "nineteen");
  private static final List<String> TENS =
      List.of("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");
  private static final Map<String, Integer> WORDS = words();

  private static Map<String, Integer> words() {
    Map<String, Integer> words = new HashMap<>();
    for (int i = 0; i < UNITS.size(); i++) {
      words.put(Keys.of(UNITS.get(i)), i);
    }
    for (int i = 0; i < TENS.size(); i++) {
      words.put(TENS.get(i), 10 * (i + 2));
    }
    return words;
  }

  static Optional<Numeral> read(Words words, int at) {
    if (words.at(at).isNumber()) {
      return Optional.of(new Numeral(Double.parseDouble(words.at(at).key()), at + 1));
    }
    Integer value = WORDS.get(words.at(at).key());
    if (value == null) {
      return Optional.empty();
    }
    Integer unit = value >= 20 ? WORDS.get(words.at(at + 1).key()) : null;
    return Optional.of(
        unit != null && unit > 0 && unit < 10
            ? new Numeral(value + unit, at + 2)
            : new Numeral(value, at + 1));
  }

  /** Whether it is a whole number within the bounds. */
  boolean isWhole(long least, long most) {
    return value == Math.rint(value) && value >= least && value <= most;
  }

  int whole() {
    return (int) value;
  }
}

package counterset.typed;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a line of a list begins with: a bullet, a number, or the place in a superset.
 *
 * @param group what all exercises of one superset share; empty text if it does not tell
 * @param first whether it begins a superset; only where there is no group
 * @param placed whether it tells a place in a superset
 * @param end the place in the line after it
 */
record Label(String group, boolean first, boolean placed, int end) {

  private static final String BULLET = "^(\\s*(?:[*>+~-]\\s+|\\[[ xX]?\\]\\s*|\\*+(?=\\w))*)";
  private static final String AFTER = "\\*{0,2}\\s*(?:[.):\\-]|(?=\\s))\\s*";
  private static final Pattern NUMBER_LETTER =
      Pattern.compile(BULLET + "\\(?(\\d{1,2})\\s?([a-c])" + AFTER);
  private static final Pattern LETTER_NUMBER =
      Pattern.compile(BULLET + "\\(?([a-km-qs-wyz])\\s?([1-9])" + AFTER);
  private static final Pattern LETTER = Pattern.compile(BULLET + "\\(?([a-c])[.):]\\s*");
  private static final Pattern NUMBER = Pattern.compile(BULLET + "[#(]?(\\d{1,2})[.)](?!\\d)\\s*");
  private static final Pattern HASH = Pattern.compile(BULLET + "#(\\d{1,2})\\s+");
  private static final Pattern PLAIN = Pattern.compile(BULLET);

  /** The label of a line; one that says nothing if there is none. */
  static Label of(Source source) {
    String text = source.text().toLowerCase(Locale.ROOT);
    return grouped(NUMBER_LETTER, text)
        .or(() -> grouped(LETTER_NUMBER, text))
        .or(() -> letter(text))
        .or(() -> plain(NUMBER, text))
        .or(() -> plain(HASH, text))
        .or(() -> plain(PLAIN, text))
        .orElse(new Label("", false, false, 0));
  }

  private static Optional<Label> grouped(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    return matcher.find()
        ? Optional.of(new Label(matcher.group(2), false, true, matcher.end()))
        : Optional.empty();
  }

  private static Optional<Label> letter(String text) {
    Matcher matcher = LETTER.matcher(text);
    return matcher.find()
        ? Optional.of(new Label("", matcher.group(2).equals("a"), true, matcher.end()))
        : Optional.empty();
  }

  private static Optional<Label> plain(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    return matcher.find()
        ? Optional.of(new Label("", false, false, matcher.end()))
        : Optional.empty();
  }
}

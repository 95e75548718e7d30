package counterset.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;

/** Values as messages show them: on one line, and not too long. */
public final class Shown {

  private static final int LONGEST = 60;

  private Shown() {}

  /** A text, cut at 60 characters, with control characters written out. */
  public static String of(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints().limit(LONGEST).forEach(c -> append(shown, c));
    return text.codePointCount(0, text.length()) > LONGEST ? shown + "..." : shown.toString();
  }

  /** A JSON value: text without its quotes, anything else as it is written. */
  public static String of(JsonNode value) {
    if (value.isObject()) {
      return "an object";
    }
    if (value.isArray()) {
      return "a list";
    }
    return of(value.asText());
  }

  private static void append(StringBuilder shown, int character) {
    if (Character.isISOControl(character) || Character.getType(character) == Character.FORMAT) {
      shown.append(String.format(Locale.ROOT, "\\u%04x", character));
    } else {
      shown.appendCodePoint(character);
    }
  }
}

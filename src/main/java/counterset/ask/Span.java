package counterset.ask;

import java.util.Locale;

/** A stretch of the ask: what is written there, made printable, and its column from 1. */
record Span(String text, int column) {

  /** The text in double quotes. */
  String quoted() {
    return "\"" + text + "\"";
  }

  /** Makes text safe to print: what has no shape of its own is shown by its code. */
  static String escape(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(c -> out.append(isPlain(c) ? Character.toString(c) : code(c)));
    return out.toString();
  }

  private static String code(int c) {
    return String.format(Locale.ROOT, "\\u%04x", c);
  }

  private static boolean isPlain(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.UNASSIGNED,
          Character.PRIVATE_USE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }
}

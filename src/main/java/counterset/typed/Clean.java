package counterset.typed;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Cuts a text into lines and makes plain what editors and phones make fancy. Columns stay those of
 * the text as it was typed.
 */
final class Clean {

  private static final String DASHES = "\u2010\u2011\u2012\u2013\u2014\u2015\u2212";
  private static final Map<Character, String> FRACTIONS =
      Map.of('\u00bc', ".25", '\u00bd', ".5", '\u00be', ".75");
  private static final Pattern HEADING =
      Pattern.compile("#+ *(warm|cool|main|superset|super set|tri)[^#]*", Pattern.CASE_INSENSITIVE);

  private Clean() {}

  /** The lines of a text; control characters are faults. */
  static List<Source> lines(String text, Report report) {
    String body = text.startsWith("\ufeff") ? text.substring(1) : text;
    List<Source> lines = new ArrayList<>();
    for (String raw : body.split("\r\n|\n|\r|\u2028|\u2029|\u0085|\f", -1)) {
      lines.add(line(lines.size() + 1, raw, report));
    }
    return lines;
  }

  private static Source line(int number, String raw, Report report) {
    StringBuilder text = new StringBuilder();
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < raw.length(); i++) {
      String plain = plain(raw, i);
      if (Character.isISOControl(raw.charAt(i)) && raw.charAt(i) != '\t') {
        report.faults.add(
            new TypedFault(
                number,
                raw.codePointCount(0, i) + 1,
                "A control character ("
                    + printable(raw.substring(i, i + 1))
                    + ") has no place in a session. Remove it."));
        plain = " ";
      }
      text.append(plain);
      for (int j = 0; j < plain.length(); j++) {
        places.add(i);
      }
    }
    places.add(raw.length());
    int cut = remarkAt(text);
    String remark = cut < 0 ? "" : text.substring(cut);
    String kept = cut < 0 ? text.toString() : text.substring(0, cut);
    return new Source(
        number, raw, kept, places.stream().mapToInt(Integer::intValue).toArray(), remark);
  }

  private static String plain(String raw, int i) {
    char c = raw.charAt(i);
    if (c == '\t' || c == '\u200b' || c == '\ufeff' || Character.isSpaceChar(c)) {
      return " ";
    }
    if (DASHES.indexOf(c) >= 0) {
      return "-";
    }
    boolean afterDigit = i > 0 && Character.isDigit(raw.charAt(i - 1));
    if (FRACTIONS.containsKey(c)) {
      return (afterDigit ? "" : "0") + FRACTIONS.get(c);
    }
    boolean decimal = c == ',' && afterDigit && isMass(raw, i + 1);
    return switch (c) {
      case '\u2044', '\u2215' -> "/";
      case '\u2019', '\u2018', '`', '\u00b4' -> "'";
      case '\u2192', '\u21d2' -> "+";
      case '\u2022', '\u25aa', '\u25cf', '\u00b7', '\u25e6', '\u2043', '\u2023' -> "*";
      case '\u2032' -> "'";
      default -> decimal ? "." : String.valueOf(c);
    };
  }

  /** Whether digits and the unit of a mass follow: then a comma is a decimal one. */
  private static boolean isMass(String raw, int at) {
    return raw.substring(at)
        .toLowerCase(Locale.ROOT)
        .matches("(?s)\\d{1,2}[\\s\u00a0\u202f]?(kg|kilo).*");
  }

  /** Where a remark begins; a heading of Markdown and a number such as #1 are none. */
  private static int remarkAt(StringBuilder text) {
    String start = text.toString().strip();
    if (HEADING.matcher(start).matches()) {
      return -1;
    }
    for (int i = 0; i < text.length(); i++) {
      boolean free = i == 0 || text.charAt(i - 1) == ' ';
      boolean counts = i + 1 < text.length() && Character.isDigit(text.charAt(i + 1));
      if (text.charAt(i) == '#' && free && !counts) {
        return i;
      }
    }
    return -1;
  }

  /** Text that can be printed on one line. */
  static String printable(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (Character.isISOControl(c) || Character.getType(c) == Character.FORMAT) {
                out.append(c == '\t' ? " " : String.format(Locale.ROOT, "\\u%04x", c));
              } else {
                out.appendCodePoint(c);
              }
            });
    return out.toString();
  }
}

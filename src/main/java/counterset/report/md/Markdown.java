package counterset.report.md;

import java.util.List;
import java.util.stream.Collectors;

/** Text as Markdown shows it, whatever is in it. */
final class Markdown {

  private static final String SPECIAL = "\\`*_{}[]<>()#+-.!|~&=";

  private Markdown() {}

  /** A text none of whose characters marks anything up; every line break becomes a blank. */
  static String text(String text) {
    StringBuilder escaped = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n' || c == '\r') {
        escaped.append(' ');
      } else {
        escaped.append(isSpecial(text, i) ? "\\" : "").append(c);
      }
    }
    return escaped.toString();
  }

  /** What needs no backslash in the middle of a word is left readable. */
  private static boolean isSpecial(String text, int i) {
    char c = text.charAt(i);
    if ("-.+=".indexOf(c) >= 0) {
      return i == 0 || text.substring(0, i).chars().allMatch(before -> before <= '9');
    }
    return SPECIAL.indexOf(c) >= 0 && "()!".indexOf(c) < 0 || c == '!' && text.startsWith("![", i);
  }

  /** A row of a table. */
  static String row(List<String> cells) {
    return cells.stream().map(Markdown::text).collect(Collectors.joining(" | ", "| ", " |\n"));
  }

  /** The head of a table. */
  static String head(String... names) {
    List<String> all = List.of(names);
    return row(all) + "|" + " --- |".repeat(all.size()) + "\n";
  }
}

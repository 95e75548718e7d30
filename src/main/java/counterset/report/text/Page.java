package counterset.report.text;

import java.util.ArrayList;
import java.util.List;

/** Lines of at most {@value #WIDTH} columns; what does not fit goes on below, indented. */
final class Page {

  static final int WIDTH = 100;

  private static final String ESCAPE = "\u001b[";

  private final StringBuilder text = new StringBuilder();
  private final boolean colour;

  /**
   * An empty page.
   *
   * @param colour whether a terminal that understands it makes some lines stand out
   */
  Page(boolean colour) {
    this.colour = colour;
  }

  void blank() {
    text.append('\n');
  }

  /** A line that stands out. */
  void strong(String lead, String words) {
    add(lead, words, "1m");
  }

  void plain(String lead, String words) {
    add(lead, words, "");
  }

  /** A line that stands back. */
  void faint(String lead, String words) {
    add(lead, words, "2m");
  }

  /** All lines. */
  String text() {
    return text.toString();
  }

  private void add(String lead, String words, String style) {
    String hang = " ".repeat(lead.length());
    String before = lead;
    for (String line : wrapped(words.replaceAll("\\p{Cntrl}", " "), WIDTH - lead.length())) {
      String whole = (before + line).stripTrailing();
      text.append(colour && !style.isEmpty() ? ESCAPE + style + whole + ESCAPE + "0m" : whole)
          .append('\n');
      before = hang;
    }
  }

  private static List<String> wrapped(String words, int width) {
    List<String> lines = new ArrayList<>();
    String rest = words;
    while (rest.length() > width) {
      int space = rest.lastIndexOf(' ', width);
      int end = space > 0 ? space : width;
      lines.add(rest.substring(0, end).stripTrailing());
      rest = rest.substring(end).strip();
    }
    lines.add(rest);
    return lines;
  }
}

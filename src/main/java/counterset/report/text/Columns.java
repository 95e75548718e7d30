package counterset.report.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A table with a column for each plan; as many columns side by side as there is room for. */
final class Columns {

  private static final int NAME = 32;
  private static final int CELL = 8;
  private static final int MOST = (Page.WIDTH - NAME - 2) / (CELL + 1);

  /**
   * A row.
   *
   * @param cells as many as there are columns; each may end with a mark of one character
   */
  record Row(String name, List<Cell> cells) {}

  /** What stands in a column, and a mark after it. */
  record Cell(String text, boolean marked) {

    static Cell plain(String text) {
      return new Cell(text, false);
    }

    private String padded() {
      return String.format(Locale.ROOT, "%" + CELL + "s", text) + (marked ? "*" : " ");
    }
  }

  private Columns() {}

  /** Writes rows under the heads of their columns. */
  static void write(Page page, List<String> heads, List<Row> rows) {
    for (int from = 0; from < heads.size(); from += MOST) {
      int to = Math.min(heads.size(), from + MOST);
      if (from > 0) {
        page.blank();
      }
      line(page, "", heads.subList(from, to).stream().map(Cell::plain).toList());
      for (Row row : rows) {
        line(page, row.name(), row.cells().subList(from, to));
      }
    }
  }

  private static void line(Page page, String name, List<Cell> cells) {
    List<String> names = wrapped(name);
    StringBuilder first =
        new StringBuilder("  ").append(String.format(Locale.ROOT, "%-" + NAME + "s", names.get(0)));
    cells.forEach(cell -> first.append(cell.padded()));
    page.plain(first.toString().stripTrailing(), "");
    names.stream().skip(1).forEach(more -> page.plain("    " + more, ""));
  }

  private static List<String> wrapped(String name) {
    List<String> lines = new ArrayList<>();
    String rest = name;
    while (rest.length() > NAME) {
      int end = rest.lastIndexOf(' ', NAME);
      lines.add(rest.substring(0, end));
      rest = rest.substring(end + 1);
    }
    lines.add(rest);
    return lines;
  }
}

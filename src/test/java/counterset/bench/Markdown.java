package counterset.bench;

import java.util.ArrayList;
import java.util.List;

/** Parts as Markdown; tables are padded, so that they read as plain text too. */
final class Markdown {

  private static final List<String> HEADINGS = List.of("What", "Measured", "Target", "Met");

  private Markdown() {}

  /** One part: its rows, its details and its notes. */
  static String of(Part part) {
    StringBuilder text = new StringBuilder("## ").append(part.title()).append("\n\n");
    if (!part.rows().isEmpty()) {
      text.append(table(HEADINGS, part.rows().stream().map(Markdown::cells).toList())).append('\n');
    }
    if (!part.details().isEmpty()) {
      text.append(table(part.columns(), part.details())).append('\n');
    }
    part.notes().forEach(note -> text.append("- ").append(note).append('\n'));
    return text.append('\n').toString();
  }

  private static List<String> cells(Row row) {
    String met = row.met() ? "yes" : "no";
    return List.of(row.name(), row.measured(), row.target(), row.target().isEmpty() ? "" : met);
  }

  static String table(List<String> columns, List<List<String>> lines) {
    List<List<String>> all = new ArrayList<>();
    all.add(columns);
    all.addAll(lines);
    int[] widths = new int[columns.size()];
    for (List<String> line : all) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], escaped(line.get(i)).length());
      }
    }
    StringBuilder text = new StringBuilder(line(columns, widths));
    for (int width : widths) {
      text.append('|').append("-".repeat(width + 2));
    }
    text.append("|\n");
    lines.forEach(line -> text.append(line(line, widths)));
    return text.toString();
  }

  private static String line(List<String> cells, int[] widths) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      String cell = escaped(cells.get(i));
      text.append("| ").append(cell).append(" ".repeat(widths[i] - cell.length() + 1));
    }
    return text.append("|\n").toString();
  }

  private static String escaped(String cell) {
    return cell.replace("|", "\\|").replace('\n', ' ');
  }
}

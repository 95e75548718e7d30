package counterset.bench;

import java.util.List;

/**
 * One part of the benchmark.
 *
 * @param notes what the numbers mean and how they came about, a sentence or more each
 * @param columns the headings of the details
 * @param details as many cells a line as there are columns; may be empty
 * @param rows what the details come to, against the targets
 */
public record Part(
    String title,
    List<String> notes,
    List<String> columns,
    List<List<String>> details,
    List<Row> rows) {

  public Part {
    notes = List.copyOf(notes);
    columns = List.copyOf(columns);
    details = List.copyOf(details);
    rows = List.copyOf(rows);
    for (List<String> line : details) {
      if (line.size() != columns.size()) {
        throw new IllegalArgumentException(
            "A line of " + title + " has " + line.size() + " cells for " + columns.size() + ".");
      }
    }
  }
}

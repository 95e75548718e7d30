package counterset.report.text;

import counterset.batch.Outcome;
import counterset.batch.Outcome.Figures;
import counterset.batch.Status;
import counterset.explain.ScoreWords;
import counterset.model.English;
import counterset.report.Times;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What came of the files of a folder, a row each. */
public final class BatchTable {

  private static final int NAME = 32;
  private static final String ROW = "%-10s  %6s  %12s  %7s  ";

  private BatchTable() {}

  /** The names of the columns. */
  public static String head(boolean colour) {
    Page page = new Page(colour);
    page.strong(
        String.format(Locale.ROOT, "%-" + NAME + "s  ", "File"),
        String.format(Locale.ROOT, ROW, "Status", "Score", "Length", "Targets") + "Note");
    return page.text();
  }

  /** The row of one file; a long name goes on below. */
  public static String row(Outcome outcome, boolean colour) {
    Page page = new Page(colour);
    String name = outcome.file();
    if (name.length() > NAME) {
      page.plain("", name);
      name = "";
    }
    String lead =
        String.format(Locale.ROOT, "%-" + NAME + "s  ", name)
            + String.format(
                Locale.ROOT,
                ROW,
                outcome.status().id(),
                outcome.figures().map(BatchTable::score).orElse("-"),
                outcome.figures().map(BatchTable::length).orElse("-"),
                outcome.figures().map(it -> it.covered() + "/" + it.targets()).orElse("-"));
    page.plain(lead, outcome.note());
    return page.text();
  }

  private static String score(Figures figures) {
    return figures.hard() < 0 ? "hard " + figures.hard() : ScoreWords.points(figures.soft());
  }

  private static String length(Figures figures) {
    return Times.clock(figures.seconds()) + "/" + Times.clock(60 * figures.minutes());
  }

  /** How many there are of each kind. */
  public static String foot(List<Outcome> outcomes, boolean colour) {
    List<String> counts = new ArrayList<>();
    for (Status status : Status.values()) {
      long count = outcomes.stream().filter(it -> it.status() == status).count();
      if (count > 0) {
        counts.add(count + " " + status.id());
      }
    }
    Page page = new Page(colour);
    page.blank();
    page.strong(
        "", English.count(outcomes.size(), "file") + ": " + String.join(", ", counts) + ".");
    return page.text();
  }
}

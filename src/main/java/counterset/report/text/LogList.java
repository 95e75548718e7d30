package counterset.report.text;

import counterset.journal.Entry;
import counterset.journal.Lift;
import counterset.model.Catalogue;
import counterset.report.Numbers;
import counterset.training.SessionLoad;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The entries of a journal, one below the other. */
public final class LogList {

  private static final String DETAIL = "            ";

  private LogList() {}

  /** Lines of at most 100 columns. */
  public static String of(List<Entry> entries, Catalogue catalogue, boolean colour) {
    Page page = new Page(colour);
    entries.forEach(entry -> write(page, entry, catalogue));
    return page.text();
  }

  private static void write(Page page, Entry entry, Catalogue catalogue) {
    page.strong(
        entry.date() + "  ",
        entry.title()
            + "   "
            + entry.minutes()
            + " min   RPE "
            + Numbers.rounded(entry.rpe(), 1)
            + "   load "
            + Numbers.rounded(SessionLoad.of(entry), 1));
    for (String line : loads(entry, catalogue)) {
      page.plain(DETAIL, line);
    }
    entry.note().ifPresent(note -> page.plain(DETAIL + "Note   ", note));
  }

  private static List<String> loads(Entry entry, Catalogue catalogue) {
    Set<String> exercises = new LinkedHashSet<>();
    entry.loads().forEach(lift -> exercises.add(lift.exercise()));
    List<String> lines = new ArrayList<>();
    for (String id : exercises) {
      List<String> sets = entry.loads(id).stream().map(LogList::set).toList();
      lines.add(Names.exercise(id, catalogue) + "   " + String.join(", ", sets));
    }
    return lines;
  }

  private static String set(Lift lift) {
    return Numbers.rounded(lift.kg(), 3) + " kg x " + lift.reps();
  }
}

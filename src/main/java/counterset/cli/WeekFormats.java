package counterset.cli;

import counterset.report.csv.IntervalTable;
import counterset.report.html.WeekPage;
import counterset.report.ics.CalendarFile;
import counterset.report.md.Notes;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * The kinds of file that a week, or a block, can be written to as a whole, by the ending of the
 * name. A new output is registered here.
 */
final class WeekFormats {

  private static final Map<String, Function<WeekFiles, String>> BY_ENDING = new LinkedHashMap<>();

  static {
    BY_ENDING.put(".txt", week -> week.text(false));
    BY_ENDING.put(".json", WeekFiles::json);
    BY_ENDING.put(".html", week -> WeekPage.of(week.weeks(), week.catalogue(), week.pictures()));
    BY_ENDING.put(
        ".ics", week -> CalendarFile.of(week.weeks(), week.monday().orElseThrow(), week.start()));
    BY_ENDING.put(".csv", week -> IntervalTable.of(week.weeks(), week.catalogue()));
    BY_ENDING.put(".md", week -> Notes.of(week.weeks(), week.catalogue()));
  }

  private WeekFormats() {}

  /** Whether a file name has an ending that is known. */
  static boolean knows(String file) {
    return PlanFormats.ending(file).filter(BY_ENDING::containsKey).isPresent();
  }

  /** The known endings, for messages. */
  static String endings() {
    return String.join(", ", BY_ENDING.keySet());
  }

  /** Planned weeks as the text of a file. */
  static String render(String file, WeekFiles weeks) {
    return BY_ENDING.get(PlanFormats.ending(file).orElseThrow()).apply(weeks);
  }
}

package counterset.cli;

import counterset.report.csv.IntervalTable;
import counterset.report.html.SessionPage;
import counterset.report.ics.CalendarFile;
import counterset.report.json.LoadJson;
import counterset.report.json.PlanJson;
import counterset.report.md.Notes;
import counterset.report.text.RunSheet;
import counterset.report.vtt.Captions;
import counterset.report.vtt.Chapters;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The kinds of file that a plan can be written to, by the ending of the name. A new output is
 * registered here.
 */
final class PlanFormats {

  private static final Map<String, Function<Handout, String>> BY_ENDING = new LinkedHashMap<>();

  static {
    BY_ENDING.put(".txt", plan -> RunSheet.of(plan.plan(), plan.catalogue(), false, plan.loads()));
    BY_ENDING.put(".json", PlanFormats::json);
    BY_ENDING.put(".html", plan -> SessionPage.of(plan.plan(), plan.catalogue(), plan.pictures()));
    BY_ENDING.put(".chapters.vtt", plan -> Chapters.of(plan.plan()));
    BY_ENDING.put(".vtt", plan -> Captions.of(plan.plan(), plan.catalogue()));
    BY_ENDING.put(
        ".ics", plan -> CalendarFile.of(plan.plan(), plan.day().orElseThrow(), plan.start()));
    BY_ENDING.put(".csv", plan -> IntervalTable.of(plan.plan(), plan.catalogue()));
    BY_ENDING.put(".md", plan -> Notes.of(plan.plan(), plan.catalogue()));
  }

  private PlanFormats() {}

  /** Whether a file name has an ending that is known. */
  static boolean knows(String file) {
    return ending(file).isPresent();
  }

  /** The known endings, for messages. */
  static String endings() {
    return String.join(", ", BY_ENDING.keySet());
  }

  /** Adds what is wrong with names given to {@code --write}. */
  static void check(List<String> files, List<String> faults) {
    for (String file : files) {
      if (!knows(file)) {
        faults.add(
            "--write (" + file + ") has no ending that is known. Maybe one of " + endings() + ".");
      }
    }
  }

  /** Whether a program reads the file again, as {@code check} does. */
  static boolean isReadAgain(String file) {
    return isOf(file, ".json");
  }

  /** Whether a file says on which day the session is. */
  static boolean isDated(String file) {
    return isOf(file, ".ics");
  }

  /** Whether a file is of the kind that an ending stands for. */
  static boolean isOf(String file, String ending) {
    return ending(file).equals(Optional.of(ending));
  }

  /** A plan as the text of a file. */
  static String render(String file, Handout plan) {
    return BY_ENDING.get(ending(file).orElseThrow()).apply(plan);
  }

  private static String json(Handout plan) {
    return plan.loads().isEmpty()
        ? PlanJson.text(plan.plan(), plan.catalogue())
        : LoadJson.plan(plan.plan(), plan.catalogue(), plan.loads());
  }

  /** The ending of a file's name, one of those known. */
  static Optional<String> ending(String file) {
    String name = file.toLowerCase(Locale.ROOT);
    return BY_ENDING.keySet().stream().filter(name::endsWith).findFirst();
  }
}

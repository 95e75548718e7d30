package counterset.cli;

import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.report.html.SessionPage;
import counterset.report.json.LoadJson;
import counterset.report.json.PlanJson;
import counterset.report.text.RunSheet;
import counterset.training.LoadAdvice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;

/**
 * The kinds of file that a plan can be written to, by the ending of the name. A new output is
 * registered here.
 */
final class PlanFormats {

  private static final Map<String, BiFunction<Plan, Catalogue, String>> BY_ENDING =
      new LinkedHashMap<>();

  static {
    BY_ENDING.put("txt", (plan, catalogue) -> RunSheet.of(plan, catalogue, false));
    BY_ENDING.put("json", PlanJson::text);
    BY_ENDING.put("html", SessionPage::of);
  }

  private PlanFormats() {}

  /** Whether a file name has an ending that is known. */
  static boolean knows(String file) {
    return BY_ENDING.containsKey(ending(file));
  }

  /** The known endings, for messages. */
  static String endings() {
    return "." + String.join(", .", BY_ENDING.keySet());
  }

  /** Whether a program reads the file again, as {@code check} does. */
  static boolean isReadAgain(String file) {
    return ending(file).equals("json");
  }

  /** A plan as the text of a file. */
  static String render(String file, Plan plan, Catalogue catalogue) {
    return BY_ENDING.get(ending(file)).apply(plan, catalogue);
  }

  /** A plan as the text of a file, with advice on loads where the kind of file has room for it. */
  static String render(String file, Plan plan, Catalogue catalogue, List<LoadAdvice> loads) {
    if (!loads.isEmpty() && ending(file).equals("txt")) {
      return RunSheet.of(plan, catalogue, false, loads);
    }
    return !loads.isEmpty() && ending(file).equals("json")
        ? LoadJson.plan(plan, catalogue, loads)
        : render(file, plan, catalogue);
  }

  /** The ending of a file's name, without the dot. */
  static String ending(String file) {
    return file.substring(file.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }
}

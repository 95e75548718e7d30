package counterset.cli;

import counterset.compare.Comparison;
import counterset.model.Catalogue;
import counterset.report.html.ComparePage;
import counterset.report.json.CompareJson;
import counterset.report.text.CompareSheet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiFunction;

/**
 * The kinds of file that a comparison can be written to, by the ending of the name. A new output is
 * registered here.
 */
final class CompareFormats {

  private static final Map<String, BiFunction<Comparison, Catalogue, String>> BY_ENDING =
      new LinkedHashMap<>();

  static {
    BY_ENDING.put(".txt", (it, catalogue) -> CompareSheet.of(it, catalogue, false));
    BY_ENDING.put(".json", CompareJson::text);
    BY_ENDING.put(".html", ComparePage::of);
  }

  private CompareFormats() {}

  /** Whether a file name has an ending that is known. */
  static boolean knows(String file) {
    return PlanFormats.ending(file).filter(BY_ENDING::containsKey).isPresent();
  }

  /** The known endings, for messages. */
  static String endings() {
    return String.join(", ", BY_ENDING.keySet());
  }

  /** A comparison as the text of a file. */
  static String render(String file, Comparison comparison, Catalogue catalogue) {
    return BY_ENDING.get(PlanFormats.ending(file).orElseThrow()).apply(comparison, catalogue);
  }
}

package counterset.report.text;

import counterset.model.Catalogue;
import counterset.training.LoadAdvice;
import java.util.ArrayList;
import java.util.List;

/** Which loads to take, by what was logged. */
final class LoadPart {

  private LoadPart() {}

  static void write(Page page, List<LoadAdvice> loads, Catalogue catalogue) {
    if (loads.isEmpty()) {
      return;
    }
    page.blank();
    page.strong("", "LOADS by the log; they go before the masses named elsewhere on this sheet");
    List<String> unknown = new ArrayList<>();
    for (LoadAdvice advice : loads) {
      String name = Names.exercise(advice.exercise(), catalogue);
      if (advice.last().isPresent()) {
        page.plain("  ", name + ": " + advice.say() + ".");
      } else {
        unknown.add(name);
      }
    }
    if (!unknown.isEmpty()) {
      page.plain("  ", "No load logged yet: " + String.join(", ", unknown) + ".");
    }
    page.faint(
        "  ",
        "Go up only if the last sets were clean and free of pain; otherwise stay or go down.");
  }
}

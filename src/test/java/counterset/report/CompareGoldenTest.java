package counterset.report;

import counterset.compare.Comparison;
import counterset.compare.Comparisons;
import counterset.model.Plan;
import counterset.report.html.ComparePage;
import counterset.report.json.CompareJson;
import counterset.report.text.CompareSheet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Comparisons of sessions written by hand, in every form. */
class CompareGoldenTest {

  private static Map<String, Comparison> all() {
    String squat = "dumbbell-partial-squat dumbbell-romanian-deadlift";
    String suitcase = "suitcase-deadlift suitcase-deadlift";
    String bare = "bodyweight-squat hip-hinge";
    String ankles = "ankle-weight-leg-curl ankle-weight-front-leg-raise";
    Plan plain = Comparisons.dumbbells(6, squat, suitcase);
    Map<String, Comparison> all = new LinkedHashMap<>();
    all.put("one-problem", Comparisons.of(plain, Comparisons.dumbbells(6, bare, suitcase)));
    all.put(
        "many-problems",
        Comparisons.of(
            plain,
            Comparisons.ankleWeights(6, squat, ankles),
            Comparisons.dumbbells(4, squat),
            Comparisons.soreKnees(6, squat, bare)));
    all.put("not-all-led", Comparisons.of(Plans.broken(), plain, Comparisons.dumbbells(6)));
    return all;
  }

  /** Styles and scripts are the same on all pages. */
  private static String body(String page) {
    return page.substring(page.indexOf("<main>"), page.indexOf("</main>")) + "</main>\n";
  }

  private static Map<String, String> texts(Function<Comparison, String> form) {
    Map<String, String> texts = new LinkedHashMap<>();
    all().forEach((name, comparison) -> texts.put(name, form.apply(comparison)));
    return texts;
  }

  @Test
  void text() {
    Golden.check("compare", ".txt", texts(it -> CompareSheet.of(it, Plans.CATALOGUE, false)));
  }

  @Test
  void json() {
    Golden.check("comparejson", ".json", texts(it -> CompareJson.text(it, Plans.CATALOGUE)));
  }

  @Test
  void page() {
    Golden.check("comparepage", ".html", texts(it -> body(ComparePage.of(it, Plans.CATALOGUE))));
  }
}

package counterset.report.file;

import counterset.compare.Compared;
import counterset.compare.Comparison;
import counterset.model.Catalogue;
import counterset.report.html.ComparePage;
import counterset.report.html.Pictures;
import counterset.report.json.CompareJson;
import counterset.report.text.CompareSheet;
import counterset.report.text.Detail;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A comparison to be handed out, and the plans that it is of.
 *
 * @param pictures of the exercises, for the pages of the plans
 */
public record CompareHandout(Comparison comparison, Catalogue catalogue, Pictures pictures) {

  /** The kinds of file that a comparison can be written to. */
  public static final Kinds<CompareHandout> KINDS =
      new Kinds<CompareHandout>()
          .with(".txt", it -> it.text(false))
          .with(".json", CompareHandout::json)
          .with(".html", it -> ComparePage.of(it.comparison, it.catalogue));

  /** The texts of a folder with some files for each plan that can be led. */
  public Map<Path, String> plans(Path folder) {
    Map<Path, String> texts = new LinkedHashMap<>();
    for (Compared compared : comparison.feasible()) {
      Handout plan = new Handout(compared.plan(), catalogue, pictures, Detail.BRIEF);
      for (String ending : Handout.IN_A_FOLDER) {
        texts.put(
            folder.resolve("option-" + compared.number() + ending),
            Handout.KINDS.render(ending, plan));
      }
    }
    return texts;
  }

  /** The comparison as text. */
  public String text(boolean colour) {
    return CompareSheet.of(comparison, catalogue, colour);
  }

  /** The comparison as JSON. */
  public String json() {
    return CompareJson.text(comparison, catalogue);
  }
}

package counterset.report.html;

import counterset.catalogue.Catalogues;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Plan;
import counterset.model.SolverNote;
import counterset.report.ClassPlans;
import counterset.report.Plans;
import counterset.report.WeekPlans;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The pages that the browser tests open. */
final class Pages {

  private static final SolverNote SCORED = new SolverNote(1, "none", "test", 0, true);

  /** Two bars that change places, as a stand-in for the picture of an exercise. */
  static final Pictures BARS =
      new Pictures() {
        @Override
        public Optional<String> still(Exercise exercise) {
          return Optional.of(svg("<path class=\"bar-still\" d=\"M4 36V4M36 36V20\"/>"));
        }

        @Override
        public Optional<String> moving(Exercise exercise) {
          return Optional.of(
              svg(
                  "<path d=\"M4 36V4\"><animate attributeName=\"d\" dur=\"2s\""
                      + " repeatCount=\"indefinite\" values=\"M4 36V4;M4 36V20;M4 36V4\"/></path>"));
        }

        @Override
        public String styles() {
          return ".bars path{stroke:currentColor;stroke-width:3}";
        }

        private static String svg(String inside) {
          return "<svg class=\"bars\" viewBox=\"0 0 40 40\" role=\"img\" aria-label=\"Two bars\">"
              + inside
              + "</svg>";
        }
      };

  private Pages() {}

  /** All of them by name. */
  static Map<String, String> all() {
    Map<String, String> pages = new LinkedHashMap<>();
    Plans.all().forEach((name, plan) -> pages.put(name, page(plan)));
    pages.put("short", page(shortPlan()));
    pages.put("long", page(longPlan()));
    pages.put("pictured", SessionPage.of(Plans.legs(), Plans.CATALOGUE, BARS));
    pages.put("hostile", hostile());
    pages.put("week", WeekPage.of(WeekPlans.legsTwice(true), Plans.CATALOGUE));
    pages.put(
        "block",
        WeekPage.of(
            List.of(WeekPlans.legsTwice(true), WeekPlans.legsTwice(false)), Plans.CATALOGUE, BARS));
    return pages;
  }

  /** Writes them into a folder. */
  static Map<String, Path> write(Path folder) throws IOException {
    Files.createDirectories(folder);
    Map<String, Path> files = new LinkedHashMap<>();
    for (Map.Entry<String, String> page : all().entrySet()) {
      files.put(
          page.getKey(),
          Files.writeString(folder.resolve(page.getKey() + ".html"), page.getValue()));
    }
    return files;
  }

  private static String page(Plan plan) {
    return SessionPage.of(plan, Plans.CATALOGUE);
  }

  /** Every kind of interval but the warm-up in about half a minute, to be run through for real. */
  static Plan shortPlan() {
    return Plans.score(
        Plans.problem(
            "Half a minute",
            1,
            new Intervals(2, 0, 3, 1, 2, 2, 2, 1),
            Set.of(),
            List.of(Plans.owned("dumbbell", 2, 8.0)),
            "quadriceps"),
        SCORED,
        List.of(),
        List.of(),
        "goblet-squat dumbbell-romanian-deadlift",
        "split-squat split-squat");
  }

  /** Forty-five minutes. */
  static Plan longPlan() {
    Plan legs = Plans.legs();
    return Plans.score(
        Plans.problem(
            "Three times round",
            45,
            new Intervals(10, 150, 40, 0, 30, 0, 2, 3),
            Set.of(),
            legs.problem().equipment(),
            "quadriceps",
            "hamstrings",
            "gluteus-maximus"),
        SCORED,
        legs.session().warmUp(),
        List.of(),
        legs.session().supersets().stream()
            .map(it -> String.join(" ", it.exercises().stream().map(Exercise::id).toList()))
            .toArray(String[]::new));
  }

  private static String hostile() {
    Catalogue catalogue = HostileCatalogue.of(Catalogues.embedded());
    return SessionPage.of(ClassPlans.good(catalogue, "Title" + HostileCatalogue.TEXT), catalogue);
  }

  /**
   * Writes them for somebody who wants to look at them.
   *
   * @param args the folder
   */
  public static void main(String[] args) throws IOException {
    write(Path.of(args[0]));
  }
}

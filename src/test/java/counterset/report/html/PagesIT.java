package counterset.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.Plan;
import counterset.report.Plans;
import counterset.report.Times;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages in a real browser. */
class PagesIT {

  private static Map<String, Path> pages;

  @BeforeAll
  static void write() throws Exception {
    Browser.prepare();
    pages = Pages.write(Browser.FOLDER.resolve("pages"));
  }

  @Test
  void theClockRunsAShortSessionThrough() throws Exception {
    Browser.check("real-time", pages.get("short"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"legs", "upper-rounds", "class"})
  void theClockNeverDrifts(String page) throws Exception {
    Browser.check("drift", pages.get(page));
  }

  @Test
  void theClockPausesJumpsAndSurvivesSleep() throws Exception {
    Browser.check("control", pages.get("class"));
  }

  @Test
  void soundSpeechAndWakeLockAreUsedAsChosen() throws Exception {
    Browser.check("sound", pages.get("legs"));
  }

  @Test
  void keysAloneAreEnough() throws Exception {
    Browser.check("keys", pages.get("class"));
  }

  @Test
  void picturesMoveOnlyForThoseWhoWantIt() throws Exception {
    Browser.check("pictures", pages.get("pictured"), pages.get("legs"));
  }

  @Test
  void hostileTextIsText() throws Exception {
    Browser.check("hostile", pages.get("hostile"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"legs", "class", "broken", "pictured", "upper-rounds", "hostile", "week", "block"})
  void nothingOverflowsAndNothingIsLoaded(String page) throws Exception {
    Browser.check("layout", pages.get(page));
  }

  @ParameterizedTest
  @ValueSource(strings = {"class", "broken", "pictured", "upper-rounds", "week"})
  void assistiveTechnologyFindsNoFault(String page) throws Exception {
    Browser.check("access", pages.get(page));
  }

  @Test
  void withoutScriptItIsARunSheet() throws Exception {
    Browser.check("no-script", pages.get("legs"));
  }

  @ParameterizedTest
  @CsvSource({"legs, 1", "pictured, 1", "class, 1", "short, 1", "long, 3", "week, 4"})
  void printsOnAsManySheetsAsPromised(String page, int most) throws Exception {
    Browser.check("print", pages.get(page));
    for (String paper : new String[] {"A4", "Letter"}) {
      try (PDDocument pdf = pdf(page, paper)) {
        assertThat(pdf.getNumberOfPages()).as(page + " on " + paper).isBetween(1, most);
      }
    }
  }

  @Test
  void thePaperHasEveryExerciseAndEveryTime() throws Exception {
    Browser.check("print", pages.get("legs"));
    Plan plan = Plans.legs();
    try (PDDocument pdf = pdf("legs", "A4")) {
      String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      plan.session().work().map(Exercise::name).forEach(name -> assertThat(text).contains(name));
      for (Interval interval : plan.timeline()) {
        assertThat(text).contains(Times.clock(interval.start()));
      }
      plan.cautions().forEach(caution -> assertThat(text).contains(caution));
      assertThat(text).doesNotContain("Pause", "Forward", "Open the clock");
    }
  }

  private static PDDocument pdf(String page, String paper) throws IOException {
    return Loader.loadPDF(
        Browser.FOLDER.resolve("pages").resolve(page + "." + paper + ".pdf").toFile());
  }
}

package counterset.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.compare.Compared;
import counterset.compare.Comparison;
import counterset.compare.Comparisons;
import counterset.compare.TradeOff;
import counterset.compare.Verdict;
import counterset.model.Plan;
import counterset.report.Plans;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class ComparePageTest {

  private static final String HOSTILE = "<script>alert('x')</script>\" & </svg> {{title}}";

  private static Comparison comparison() {
    Plan good =
        Comparisons.dumbbells(
            6, "dumbbell-partial-squat dumbbell-romanian-deadlift", "suitcase-deadlift");
    return Comparisons.of(good, Plans.legs(), Plans.upperRounds(), Plans.broken());
  }

  private static Element svg(String page) throws Exception {
    int from = page.indexOf("<svg class=\"plot\"");
    String svg = page.substring(from, page.indexOf("</svg>\n<p", from) + 6);
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)))
        .getDocumentElement();
  }

  @Test
  void everythingIsThereAsText() {
    Comparison comparison = comparison();
    String page = ComparePage.of(comparison, Plans.CATALOGUE);
    comparison.all().forEach(it -> assertThat(page).contains(it.label()));
    Verdict.of(comparison, Plans.CATALOGUE)
        .forEach(line -> assertThat(page).contains(line.replace("\"", "&quot;")));
    assertThat(page).contains("Cannot be led:", "A reason.", "Content-Security-Policy");
    assertThat(page).doesNotContain("http:", "https:", "{{");
  }

  @Test
  void aPlotHasADotForEachPlaceAndTheSameInWords() throws Exception {
    Comparison comparison = comparison();
    Element svg = svg(ComparePage.of(comparison, Plans.CATALOGUE));
    TradeOff points = TradeOff.of(comparison).get(0);
    NodeList circles = svg.getElementsByTagName("circle");
    assertThat(circles.getLength())
        .isEqualTo(
            (int)
                points.points().stream()
                    .map(it -> List.of(it.across(), it.up()))
                    .distinct()
                    .count());
    int front = 0;
    for (int i = 0; i < circles.getLength(); i++) {
      front += ((Element) circles.item(i)).getAttribute("class").equals("on-front") ? 1 : 0;
    }
    assertThat(front)
        .isEqualTo((int) points.points().stream().filter(TradeOff.Point::onFront).count());
    assertThat(svg.getAttribute("role")).isEqualTo("img");
    for (TradeOff.Point point : points.points()) {
      assertThat(svg.getAttribute("aria-label"))
          .contains("Option " + point.plan().number() + ": Minutes " + (int) point.across());
    }
  }

  @Test
  void hostileTextIsShownAsText() {
    Comparison comparison = comparison();
    List<Compared> hostile = new ArrayList<>();
    for (Compared it : comparison.all()) {
      boolean led = it.feasible();
      hostile.add(
          new Compared(
              it.number(),
              HOSTILE,
              it.plan(),
              led ? List.of() : List.of(HOSTILE),
              List.of(HOSTILE)));
    }
    String page = ComparePage.of(new Comparison(HOSTILE, hostile), Plans.CATALOGUE);
    assertThat(page).doesNotContain("<script>alert", "</svg> {{", "x')</script>");
    assertThat(page).contains("&lt;script&gt;alert");
    assertThat(Pattern.compile("<script").matcher(page).results().count()).isEqualTo(1);
    List<String> ids =
        Pattern.compile(" id=\"([^\"]*)\"").matcher(page).results().map(it -> it.group(1)).toList();
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(
            Pattern.compile("aria-labelledby=\"([^\"]*)\"")
                .matcher(page)
                .results()
                .map((MatchResult it) -> it.group(1)))
        .isSubsetOf(ids);
  }

  @Property
  void anAxisHoldsItsValuesAndAFewRoundNumbers(@ForAll long seed) {
    Random random = new Random(seed);
    int reach = 1 + random.nextInt(1000);
    double[] values =
        random.doubles(1 + random.nextInt(9)).map(it -> Math.rint((it - 0.5) * reach)).toArray();
    Scale scale = Scale.of(values);
    for (double value : values) {
      assertThat(scale.share(value)).as("seed %d", seed).isBetween(0.02, 0.98);
    }
    assertThat(scale.ticks()).as("seed %d", seed).hasSizeBetween(1, 7).doesNotHaveDuplicates();
    assertThat(scale.ticks())
        .allSatisfy(
            tick -> {
              assertThat(tick % scale.step()).isZero();
              assertThat(scale.share(tick)).isBetween(0.0, 1.0);
            });
  }

  @Property
  void labelsOfOneColumnKeepApart(@ForAll long seed) {
    Random random = new Random(seed);
    int count = 1 + random.nextInt(15);
    double[] x = random.doubles(count, 0, 100).toArray();
    double[] y = random.doubles(count, 34, 250).toArray();
    double[] labels = Labels.spread(x, y, 9, 34, 250);
    for (int i = 0; i < count; i++) {
      assertThat(labels[i]).as("seed %d", seed).isBetween(33.999, 250.001);
      for (int j = 0; j < i; j++) {
        if (Math.abs(x[i] - x[j]) < 9) {
          assertThat(Math.abs(labels[i] - labels[j]))
              .as("seed %d", seed)
              .isGreaterThan(Labels.HEIGHT - 0.7);
        }
      }
    }
  }
}

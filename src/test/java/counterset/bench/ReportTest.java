package counterset.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/** What the benchmark writes can be read. */
class ReportTest {

  @TempDir Path folder;

  @BeforeAll
  static void withoutAScreen() {
    System.setProperty("java.awt.headless", "true");
  }

  @Test
  void rowsAndDetailsAreTablesWithEqualCellsInEveryLine() {
    Part part =
        new Part(
            "Some",
            List.of("A note."),
            List.of("a", "b"),
            List.of(List.of("1|2", "three\nlines")),
            List.of(
                new Row("asked", "2 times", "at most 1 times", false),
                new Row("not asked", "3", "", true)));

    String text = Markdown.of(part);

    assertThat(text.lines().toList())
        .containsExactly(
            "## Some",
            "",
            "| What      | Measured | Target          | Met |",
            "|-----------|----------|-----------------|-----|",
            "| asked     | 2 times  | at most 1 times | no  |",
            "| not asked | 3        |                 |     |",
            "",
            "| a    | b           |",
            "|------|-------------|",
            "| 1\\|2 | three lines |",
            "",
            "- A note.",
            "");
  }

  @Test
  void aLineWithACellTooFewIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new Part("Some", List.of(), List.of("a", "b"), List.of(List.of("1")), List.of()))
        .withMessageContaining("1 cells for 2");
  }

  @Test
  void numbersAreShortAndTheSameInEveryLocale() {
    assertThat(Words.number(0.256)).isEqualTo("0.26");
    assertThat(Words.number(1234.5)).isEqualTo("1235");
    assertThat(Words.number(Double.POSITIVE_INFINITY)).isEqualTo("never");
    assertThat(Words.share(0.05)).isEqualTo("1/20");
    assertThat(Words.share(1.5)).isEqualTo("1.5 times");
  }

  private Path bars(String name, Double last) throws IOException {
    Map<String, List<Double>> series = new LinkedHashMap<>();
    series.put("standard", List.of(1.0, -2.0));
    series.put("referee", Arrays.asList(0.5, last));
    Path file = folder.resolve(name);
    Charts.bars(file, "A & B", "points", List.of("one", "two"), series);
    return file;
  }

  @Test
  void picturesAreWellFormedAndTitled() throws Exception {
    Path lines = folder.resolve("lines.svg");
    Charts.lines(
        lines, "A & B", "minutes", "seconds", List.of(10, 60), Map.of("one", List.of(1.0, 3.5)));

    for (Path file : List.of(bars("bars.svg", null), lines)) {
      DocumentBuilderFactory documents = DocumentBuilderFactory.newInstance();
      documents.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      Element root = documents.newDocumentBuilder().parse(file.toFile()).getDocumentElement();
      assertThat(root.getTagName()).isEqualTo("svg");
      assertThat(root.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("A & B");
    }
  }

  @Test
  void aValueThatDoesNotExistHasNoBar() throws IOException {
    String without = Files.readString(bars("without.svg", null));
    String with = Files.readString(bars("with.svg", -1.5));
    assertThat(marks(with)).isGreaterThan(marks(without));
  }

  private static long marks(String svg) {
    return svg.lines().filter(line -> line.contains("<path") || line.contains("<rect")).count();
  }
}

package counterset.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PageTest {

  @Test
  void longLinesGoOnBelowTheirBeginning() {
    Page page = new Page(false);
    page.plain("  - ", "word ".repeat(30).strip());
    assertThat(page.text().lines())
        .containsExactly("  - " + "word ".repeat(19).strip(), "    " + "word ".repeat(11).strip());
  }

  @Test
  void wordsThatNeverEndAreCut() {
    Page page = new Page(false);
    page.plain("> ", "x".repeat(250));
    assertThat(page.text().lines())
        .containsExactly("> " + "x".repeat(98), "  " + "x".repeat(98), "  " + "x".repeat(54));
  }

  @Test
  void aLineThatFitsKeepsItsSpaces() {
    Page page = new Page(false);
    page.plain("a", "b   c");
    page.strong("", "\u001b[31mred\n");
    assertThat(page.text()).isEqualTo("ab   c\n [31mred\n");
  }
}

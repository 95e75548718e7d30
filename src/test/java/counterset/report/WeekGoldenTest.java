package counterset.report;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.report.text.Detail;
import counterset.report.text.WeekSheet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Weeks of sessions written by hand, as text. */
class WeekGoldenTest {

  @Test
  void looksAsAgreed() {
    Golden.check(
        "week",
        ".txt",
        Map.of(
            "wish",
                WeekSheet.of(
                    WeekPlans.legsTwice(false), Plans.CATALOGUE, false, Detail.FULL, List.of()),
            "rule",
                WeekSheet.of(
                    WeekPlans.legsTwice(true), Plans.CATALOGUE, false, Detail.BRIEF, List.of())));
  }

  @Test
  void fitsThePageAndColourIsOnlyAnExtra() {
    String plain =
        WeekSheet.block(
            List.of(WeekPlans.legsTwice(false), WeekPlans.legsTwice(true)),
            Plans.CATALOGUE,
            false,
            Detail.FULL);
    assertThat(plain.lines())
        .allMatch(line -> line.length() <= 100 && line.equals(line.stripTrailing()));
    assertThat(plain.codePoints()).allMatch(c -> c == '\n' || c >= ' ' && c < 127);
    String coloured =
        WeekSheet.block(
            List.of(WeekPlans.legsTwice(false), WeekPlans.legsTwice(true)),
            Plans.CATALOGUE,
            true,
            Detail.FULL);
    assertThat(coloured.replaceAll("\u001b\\[[0-9]m", "")).isEqualTo(plain);
  }
}

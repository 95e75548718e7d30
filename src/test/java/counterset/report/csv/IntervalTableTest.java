package counterset.report.csv;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.Plan;
import counterset.report.Golden;
import counterset.report.Hostile;
import counterset.report.Plans;
import counterset.report.RandomPlans;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables, read by another library than the one that writes them. */
class IntervalTableTest {

  @Test
  void looksAsAgreed() {
    Map<String, String> files = new LinkedHashMap<>();
    Plans.all().forEach((name, plan) -> files.put(name, IntervalTable.of(plan, Plans.CATALOGUE)));
    Golden.check("table", ".csv", files);
  }

  @TestFactory
  Stream<DynamicTest> hasARowForEachInterval() {
    return Stream.iterate(1L, seed -> seed + 1)
        .limit(60)
        .map(
            seed ->
                DynamicTest.dynamicTest(
                    "seed " + seed, () -> holds(RandomPlans.of(seed), Plans.CATALOGUE)));
  }

  private static List<CSVRecord> holds(Plan plan, Catalogue catalogue) throws IOException {
    String file = IntervalTable.of(plan, catalogue);
    // RFC 4180, 2.1: lines end with CRLF.
    assertThat(file).endsWith("\r\n");
    List<CSVRecord> rows = rows(file);
    assertThat(rows).hasSameSizeAs(plan.timeline());
    for (int i = 0; i < rows.size(); i++) {
      Interval interval = plan.timeline().get(i);
      assertThat(rows.get(i).get("start")).isEqualTo(Integer.toString(interval.start()));
      assertThat(rows.get(i).get("kind")).isEqualTo(interval.kind().id());
      assertThat(rows.get(i).get("exercise"))
          .isEqualTo(interval.exercise().map(Exercise::id).orElse(""));
    }
    return rows;
  }

  /** OWASP, "CSV Injection": no cell may begin with what a spreadsheet takes for a formula. */
  @Test
  void noCellIsAFormula() throws IOException {
    List<CSVRecord> rows = holds(Hostile.plan(), Hostile.catalogue());

    for (CSVRecord row : rows) {
      row.forEach(cell -> assertThat(cell).doesNotMatch("(?s)[=+\\-@\\t\\r\\n].*"));
    }
    assertThat(rows).anyMatch(row -> row.get("name").equals("'" + Hostile.MARK + "Goblet squat"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1", "+1", "-1", "@a", "\ta", "\ra", "\na"})
  void aFormulaIsMadeText(String cell) {
    assertThat(Cells.safe(cell)).isEqualTo("'" + cell);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "a=1", "12", "Goblet squat", "(1)"})
  void aTextStaysAsItIs(String cell) {
    assertThat(Cells.safe(cell)).isEqualTo(cell);
  }

  private static List<CSVRecord> rows(String file) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(file, format)) {
      return parser.getRecords();
    }
  }
}

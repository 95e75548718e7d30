package counterset.bench;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CostBenchTest {

  private static CostBench.Line line(double usual, double larger, double shortest, double longest) {
    return new CostBench.Line(
        "some", usual, larger, Map.of(10, shortest, 20, 1.0, 30, 1.0, 45, 1.0, 60, longest));
  }

  @Test
  void theMedianRatioDecides() {
    List<Row> rows =
        CostBench.rows(List.of(line(1, 1.5, 1, 9), line(2, 2, 1, 4.5), line(1, 4, 2, 8)));
    assertThat(rows.get(0).measured()).isEqualTo("1.50 times (median; at most 4.00)");
    assertThat(rows.get(0).met()).isTrue();
    assertThat(rows.get(1).measured()).isEqualTo("4.50 times (median; at most 9.00)");
    assertThat(rows.get(1).met()).isFalse();
  }

  @Test
  void copiesAreExercisesAndFamiliesOfTheirOwn() {
    Catalogue catalogue = Catalogues.embedded();

    Catalogue large = Copies.times(catalogue, 3);

    assertThat(large.exercises()).hasSize(3 * catalogue.exercises().size());
    assertThat(large.exercises(Part.MAIN)).hasSize(3 * catalogue.exercises(Part.MAIN).size());
    assertThat(large.exercises().values().stream().map(Exercise::root).distinct())
        .hasSize(
            3
                * (int)
                    catalogue.exercises().values().stream().map(Exercise::root).distinct().count());
    assertThat(large.exercises().values().stream().map(Exercise::family).distinct())
        .hasSize(
            3
                * (int)
                    catalogue.exercises().values().stream()
                        .map(Exercise::family)
                        .distinct()
                        .count());
    assertThat(large.exercises().values().stream().filter(e -> e.variantOf().isPresent()))
        .allMatch(e -> large.exercises().containsKey(e.variantOf().orElseThrow()));
  }
}

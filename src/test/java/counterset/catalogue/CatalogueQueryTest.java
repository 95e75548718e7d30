package counterset.catalogue;

import static counterset.catalogue.SmallCatalogue.exercise;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterset.json.InvalidInputException;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.model.Region;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CatalogueQueryTest {

  @TempDir Path folder;
  private Catalogue catalogue;

  @BeforeEach
  void load() {
    SmallCatalogue.in(folder)
        .with(
            "exercises/a.json",
            "["
                + String.join(
                    ",",
                    exercise(
                        "curl",
                        ", \"primary\": [\"hamstrings\"], \"level\": 3, \"needs\": [{\"equipment\": \"dumbbell\"}]"),
                    exercise(
                        "curl-light",
                        ", \"primary\": [\"hamstrings\"], \"variantOf\": \"curl\", \"needs\": [{\"equipment\": \"dumbbell\"}]"),
                    exercise(
                        "wall-sit",
                        ", \"needs\": [{\"equipment\": \"wall\"}], \"names\": [\"Invisible chair\"]"),
                    exercise("march", ", \"part\": \"warm-up\", \"seconds\": 30"))
                + "]");
    catalogue = Catalogues.load(folder);
  }

  @Test
  void everyConditionNarrows() {
    CatalogueQuery all = CatalogueQuery.of(catalogue);
    assertThat(all.list()).hasSize(6);
    assertThat(ids(all.muscle("hamstrings"))).containsExactly("curl", "curl-light");
    assertThat(ids(all.muscle("hamstrings").level(2))).containsExactly("curl-light");
    assertThat(ids(all.equipment("dumbbell"))).containsExactly("curl", "curl-light");
    assertThat(ids(all.equipment("none").part(Part.MAIN)))
        .containsExactly("wall-sit", "squat", "wide-squat");
    assertThat(ids(all.text("invisible"))).containsExactly("wall-sit");
    assertThat(ids(all.text(" CURL  light "))).containsExactly("curl-light");
    assertThat(ids(all.limitation("sore-knees"))).isEmpty();
    assertThat(ids(all.region(Region.UPPER))).isEmpty();
    assertThat(ids(all.pattern("squat"))).hasSize(6);
  }

  @Test
  void unknownIdsNameTheNearest() {
    assertThatThrownBy(() -> CatalogueQuery.of(catalogue).muscle("hamstring"))
        .isInstanceOf(InvalidInputException.class)
        .hasMessage("catalogue: The muscle (hamstring) is not known. Maybe \"hamstrings\"?");
    assertThatThrownBy(() -> CatalogueQuery.of(catalogue).pattern("squad"))
        .hasMessageContaining("Maybe \"squat\"?");
  }

  @Test
  void gapsCountBaseExercises() {
    Gaps gaps = Gaps.of(catalogue);
    assertThat(gaps.cells())
        .as("2 default targets, 3 kinds of equipment, 2 limitations")
        .hasSize(12);
    assertThat(gaps.cells())
        .contains(
            new Gaps.Cell("quadriceps", Optional.empty(), Optional.empty(), 3),
            new Gaps.Cell("quadriceps", Optional.empty(), Optional.of("sore-knees"), 0),
            new Gaps.Cell("hamstrings", Optional.of("dumbbell"), Optional.empty(), 1));
    assertThat(gaps.thin())
        .containsExactly(new Gaps.Cell("hamstrings", Optional.of("dumbbell"), Optional.empty(), 1));
    assertThat(gaps.empty()).hasSize(10);
  }

  private static List<String> ids(CatalogueQuery query) {
    return query.list().stream().map(Exercise::id).toList();
  }
}

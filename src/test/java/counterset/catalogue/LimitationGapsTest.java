package counterset.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.LimitationGaps.Cell;
import counterset.model.Catalogue;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LimitationGapsTest {

  @TempDir Path folder;

  @Test
  void thereIsACellForEveryLimitationAndPairAndDefaultTarget() {
    Catalogue catalogue = Catalogues.embedded();
    int limitations = catalogue.limitations().size();
    long targets = catalogue.muscles().values().stream().filter(m -> m.defaultTarget()).count();
    List<Cell> cells = LimitationGaps.of(catalogue).cells();
    assertThat(cells).hasSize((int) (targets * limitations * (limitations + 1) / 2));
    assertThat(cells).doesNotHaveDuplicates();
  }

  @Test
  void variantsCountOnceAndOnlyHomeEquipmentAndOnlyWhatIsAllowed() {
    SmallCatalogue.in(folder)
        .with(
            "exercises/squats.json",
            "["
                + exercise("easy-one", "")
                + exercise("easy-two", ", \"variantOf\": \"easy-one\"")
                + exercise("at-the-wall", ", \"needs\": [{\"equipment\": \"wall\"}]")
                + exercise("jumped", ", \"traits\": [\"jump\"]")
                + SmallCatalogue.exercise("hard", "")
                + "]");
    assertThat(LimitationGaps.of(Catalogues.load(folder)).cells())
        .containsExactly(
            new Cell(List.of("sore-knees"), "quadriceps", 2),
            new Cell(List.of("sore-knees"), "hamstrings", 0));
  }

  @Test
  void fourAreEnoughForOneLimitationAndTwoForAPair() {
    Cell three = new Cell(List.of("sore-knees"), "calves", 3);
    Cell four = new Cell(List.of("sore-knees"), "chest", 4);
    Cell one = new Cell(List.of("sore-knees", "no-floor"), "calves", 1);
    Cell two = new Cell(List.of("sore-knees", "no-floor"), "chest", 2);
    assertThat(new LimitationGaps(List.of(three, four, one, two)).missing())
        .containsExactly(three, one);
    assertThat(GapsJson.text(new LimitationGaps(List.of(one))))
        .contains("\"limitations\"", "\"no-floor\"", "\"calves\"", "\"ankle-weights\"");
  }

  private static String exercise(String id, String more) {
    return SmallCatalogue.exercise(id, more).replace("{\"knee\": 2}", "{\"knee\": 1}") + ",\n";
  }
}

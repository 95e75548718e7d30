package counterset.search;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.Problems;
import counterset.model.Catalogue;
import counterset.model.MovementPattern;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Region;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sessions have what their limitations favour; real catalogue. Common practice, no source. */
class FavouredPatternsTest {

  private static final Catalogue CATALOGUE = Catalogues.embedded();

  @ParameterizedTest
  @CsvSource({
    "sore-shoulders, UPPER, shoulder-rotation",
    "sore-knees, LOWER, knee-extension",
    "sore-knees, LOWER, abduction",
    "sore-lower-back, CORE, side"
  })
  void areThereForWhoNeedsThem(String limitation, Region region, String pattern) {
    assertThat(patterns(region, limitation)).contains(pattern);
  }

  @Test
  void areNotThereForOthers() {
    assertThat(patterns(Region.UPPER)).doesNotContain("shoulder-rotation");
    assertThat(patterns(Region.LOWER)).doesNotContain("knee-extension");
    assertThat(patterns(Region.LOWER, "sore-shoulders")).doesNotContain("shoulder-rotation");
  }

  private static Set<String> patterns(Region region, String... limitations) {
    Problem problem =
        Problems.of(CATALOGUE, region)
            .owning(Problems.two("dumbbell"), Problems.two("ankle-weights"))
            .limited(limitations)
            .problem();
    Plan plan = new SessionPlanner(CATALOGUE, "test").plan(problem, Limit.of(Effort.QUICK));
    return plan.session().supersets().stream()
        .flatMap(superset -> superset.exercises().stream())
        .map(CATALOGUE.wants()::patternOf)
        .flatMap(Optional::stream)
        .map(MovementPattern::id)
        .collect(Collectors.toSet());
  }
}

package counterset.explain;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.model.Plan;
import counterset.model.Superset;
import counterset.report.Plans;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReasonsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "dumbbell-curl triceps-kickback|opposites: biceps and triceps, front and back of the upper arm",
        "floor-press bent-over-row|opposites: chest and upper back",
        "goblet-squat bent-over-row|lower body with upper body",
        "goblet-squat dumbbell-romanian-deadlift|front with back of the lower body",
        "split-squat hip-hinge|knee-dominant with hip-dominant work",
        "goblet-squat bodyweight-squat|the same muscle twice: quadriceps",
        "clam clam|one-sided: hip abductors",
        "goblet-squat clam|quadriceps with hip abductors",
        "floor-press|chest",
        "goblet-squat bent-over-row clam|lower body with upper body; then upper body with lower body",
      })
  void kindsInPlainWords(String ids, String heading) {
    assertThat(new KindWords(Plans.CATALOGUE).heading(superset(ids))).isEqualTo(heading);
  }

  @Test
  void onlyMusclesThatRestAreSaidToRest() {
    KindWords kinds = new KindWords(Plans.CATALOGUE);
    assertThat(kinds.sentence(superset("goblet-squat bent-over-row")))
        .endsWith(": one rests while the other works.");
    assertThat(kinds.sentence(superset("split-squat hip-hinge")))
        .endsWith(": the main work changes over, the helpers stay busy.");
    assertThat(kinds.sentence(superset("clam clam")))
        .endsWith(": one side rests while the other works.");
  }

  @Test
  void reasonsNameTargetsAndEquipmentThatStays() {
    Plan plan = Plans.legs();
    Reasons reasons = new Reasons(plan, Plans.CATALOGUE);
    List<Superset> supersets = plan.session().supersets();
    assertThat(reasons.of(supersets.get(4)))
        .contains(
            "Trains directly: quadriceps and hamstrings.",
            "The ankle weights stay in use throughout.");
    assertThat(reasons.of(supersets.get(6)))
        .contains("The ankle weights stay in use throughout, as before it.");
    assertThat(new Reasons(Plans.broken(), Plans.CATALOGUE).of(new Superset(3, List.of())))
        .isEmpty();
  }

  @Test
  void theFetchListNamesEachPieceOnce() {
    assertThat(FetchLine.of(Plans.legs()))
        .containsExactly(
            new FetchLine("two dumbbells (heavy, 10 kg)", "supersets 1-4", "within reach"),
            new FetchLine(
                "ankle weights", "supersets 5-8", "within reach, strapped on before superset 5"),
            new FetchLine("a mat", "supersets 7-8", "laid out before the start"));
  }

  private static Superset superset(String ids) {
    return new Superset(
        1, Arrays.stream(ids.split(" ")).map(Plans.CATALOGUE.exercises()::get).toList());
  }
}

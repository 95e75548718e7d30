package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.ask.AskReader;
import counterset.catalogue.Catalogues;
import counterset.model.Changeover;
import counterset.model.Exercise;
import counterset.model.Limitation;
import counterset.model.Opposites;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.model.TargetCoverage;
import counterset.search.Effort;
import counterset.search.Limit;
import counterset.search.SessionPlanner;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The ask that a coach would type first gives a session that a coach would lead. */
class LowerBodyAskTest {

  private static final Plan PLAN =
      new SessionPlanner(Catalogues.embedded(), "test")
          .plan(
              new AskReader(Catalogues.embedded()).read(Cli.ASK).problem().orElseThrow(),
              Limit.of(Effort.STANDARD));

  private static final List<Superset> SUPERSETS = PLAN.session().supersets();

  private static boolean needs(Superset superset, String equipment) {
    return superset.exercises().stream()
        .flatMap(exercise -> exercise.needs().stream())
        .anyMatch(need -> need.equipment().equals(equipment));
  }

  @Test
  void eightSupersetsWithoutAFault() {
    assertThat(SUPERSETS).hasSize(8).allMatch(superset -> superset.exercises().size() == 2);
    assertThat(PLAN.matches()).noneMatch(counterset.explain.FaultWords::isFault);
    assertThat(PLAN.totals().seconds()).isBetween(1190, 1200);
  }

  @Test
  void allSixMuscleGroupsAreCovered() {
    assertThat(PLAN.coverage())
        .extracting(TargetCoverage::muscle)
        .containsExactlyInAnyOrder(
            "quadriceps",
            "hamstrings",
            "gluteus-maximus",
            "hip-abductors",
            "hip-adductors",
            "calves");
    assertThat(PLAN.coverage()).allMatch(target -> target.direct() >= 1);
  }

  @Test
  void nothingThatSoreKneesForbid() {
    Limitation knees = Catalogues.embedded().limitations().get("sore-knees");
    assertThat(PLAN.session().work()).allMatch(knees::allows);
    assertThat(PLAN.session().warmUp()).isNotEmpty().allMatch(knees::allows);
    assertThat(PLAN.cautions()).contains(knees.caution());
  }

  @Test
  void ankleWeightsAreStrappedOnOnce() {
    int[] with =
        IntStream.range(0, SUPERSETS.size())
            .filter(i -> needs(SUPERSETS.get(i), "ankle-weights"))
            .toArray();
    assertThat(with).isNotEmpty();
    assertThat(SUPERSETS.subList(with[0], with[with.length - 1]))
        .flatExtracting(Superset::exercises)
        .as("what is strapped on stays on")
        .allMatch(
            e ->
                e.allowsWorn().contains("ankle-weights")
                    || e.needs().stream()
                        .anyMatch(need -> need.equipment().equals("ankle-weights")));
  }

  @Test
  void halfOfThePositionsAtLeastAreLoaded() {
    long loaded =
        SUPERSETS.stream()
            .flatMap(superset -> superset.exercises().stream())
            .filter(e -> e.needs().stream().anyMatch(need -> !need.equipment().equals("wall")))
            .count();
    assertThat(loaded).isGreaterThanOrEqualTo(8).isEqualTo(PLAN.totals().loadedPositions());
    assertThat(SUPERSETS).anyMatch(superset -> needs(superset, "dumbbell"));
  }

  @Test
  void downToTheFloorOrUpAgainOnceAtMost() {
    List<Boolean> floor =
        PLAN.session().work().map(Exercise::position).map(position -> position.isFloor()).toList();
    long changes =
        IntStream.range(1, floor.size())
            .filter(i -> !floor.get(i).equals(floor.get(i - 1)))
            .count();
    assertThat(changes).isLessThanOrEqualTo(1).isEqualTo(PLAN.totals().floorTrips());
  }

  @Test
  void everyChangeoverFitsInItsPause() {
    assertThat(PLAN.changeovers()).hasSize(15).allMatch(c -> c.seconds() <= c.available());
    assertThat(PLAN.changeovers().stream().mapToInt(Changeover::seconds).sum())
        .isEqualTo(PLAN.totals().changeoverSeconds());
  }

  @Test
  void kindsAreTrue() {
    Opposites opposites = new Opposites(Catalogues.embedded());
    assertThat(PLAN.kinds())
        .isEqualTo(SUPERSETS.stream().map(s -> opposites.kind(s.exercises())).toList());
  }

  @Test
  void noExerciseOrVariantComesTwice() {
    assertThat(PLAN.session().work().map(Exercise::root)).doesNotHaveDuplicates();
  }
}

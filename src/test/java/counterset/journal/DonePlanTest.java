package counterset.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Plan;
import counterset.model.TargetCoverage;
import counterset.report.Plans;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DonePlanTest {

  private static final Set<IntervalKind> NOT_WORKED =
      EnumSet.of(IntervalKind.GET_READY, IntervalKind.WARM_UP, IntervalKind.COOL_DOWN);

  static Stream<Plan> plans() {
    return Plans.all().values().stream();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void setsOfTargetsAreThoseOfTheCoverage(Plan plan) {
    List<MuscleSets> muscles = new DonePlan(plan).muscles();
    for (TargetCoverage target : plan.coverage()) {
      if (target.direct() + target.indirect() > 0) {
        assertThat(muscles)
            .contains(new MuscleSets(target.muscle(), target.direct(), target.indirect()));
      }
    }
    assertThat(muscles).extracting(MuscleSets::muscle).doesNotHaveDuplicates();
  }

  @Test
  void groupsThatAreNoTargetsCountToo() {
    assertThat(new DonePlan(Plans.legs()).muscles())
        .extracting(MuscleSets::muscle)
        .contains("quadriceps", "lower-back");
  }

  @Test
  void bothSidesAreOneSetAndRoundsAreSets() {
    assertThat(new DonePlan(Plans.legs()).exercises())
        .hasSize(13)
        .contains(new ExerciseSets("suitcase-deadlift", 1))
        .startsWith(new ExerciseSets("goblet-squat", 1));
    assertThat(new DonePlan(Plans.upperRounds()).exercises())
        .contains(new ExerciseSets("forearm-supported-row", 2), new ExerciseSets("floor-press", 2))
        .hasSize(7);
  }

  /** 19:55 is 20 minutes. */
  @Test
  void minutesAreWhole() {
    assertThat(Plans.legs().totals().seconds()).isEqualTo(1195);
    assertThat(new DonePlan(Plans.legs()).minutes()).isEqualTo(20);
  }

  @Test
  void partsFillTheSessionButForGettingReadyAndIdleSeconds() {
    List<EnergyBlock> blocks = new DonePlan(Plans.upperRounds()).energy(20);
    assertThat(blocks)
        .extracting(EnergyBlock::part)
        .containsExactly("warm-up", "supersets", "cool-down");
    int without =
        Plans.upperRounds().timeline().stream()
            .filter(interval -> interval.exercise().isEmpty())
            .filter(interval -> NOT_WORKED.contains(interval.kind()))
            .mapToInt(Interval::seconds)
            .sum();
    assertThat(without).isEqualTo(10 + 10);
    assertThat(blocks.stream().mapToInt(EnergyBlock::seconds).sum())
        .isEqualTo(Plans.upperRounds().totals().seconds() - without);
  }

  /** All work intervals are of one length, so the mean is that of the positions. */
  @Test
  void metOfTheSupersetsIsTheMeanOfTheirExercises() {
    Plan plan = Plans.legs();
    double mean =
        plan.session().supersets().stream()
            .flatMap(superset -> superset.exercises().stream())
            .map(Exercise::met)
            .mapToDouble(met -> met.value())
            .average()
            .orElseThrow();
    EnergyBlock supersets = new DonePlan(plan).energy(20).get(1);
    assertThat(supersets.met()).isCloseTo(mean, within(0.005));
    assertThat(supersets.codes()).contains("02052 (2024)").isSorted();
  }

  @Test
  void aShorterSessionTakesLess() {
    DonePlan done = new DonePlan(Plans.legs());
    int planned = done.energy(20).stream().mapToInt(EnergyBlock::seconds).sum();
    int halved = done.energy(10).stream().mapToInt(EnergyBlock::seconds).sum();
    assertThat(halved).isCloseTo(planned * 600 / 1195, within(2));
  }
}

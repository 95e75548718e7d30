package counterset.search;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.catalogue.Catalogues;
import counterset.fixture.Problems;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Intervals;
import counterset.model.Part;
import counterset.model.Region;
import counterset.model.Session;
import counterset.model.Superset;
import counterset.timeline.Timeline;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The moves before and after the supersets of a session, with the real catalogue. */
class SurroundingsTest {

  private static final Catalogue CATALOGUE = Catalogues.embedded();

  private static Session around(Problems problems) {
    Exercise squat = CATALOGUE.exercises().get("partial-squat");
    Exercise curl = CATALOGUE.exercises().get("standing-leg-curl");
    return new Surroundings(problems.problem(), CATALOGUE)
        .around(List.of(new Superset(1, List.of(squat, curl))));
  }

  private static Problems problems(int warmUp, int coolDown) {
    return Problems.of(CATALOGUE, Region.values())
        .clock(new Intervals(10, warmUp, 45, 0, 30, coolDown, 2, 1));
  }

  static Set<String> limitations() {
    return CATALOGUE.limitations().keySet();
  }

  /** A static hold of 10 to 30 s a time: Garber 2011. */
  @ParameterizedTest
  @ValueSource(ints = {30, 60, 120, 200, 300})
  void stretchesAreHeldTenToThirtySeconds(int coolDown) {
    Session session = around(problems(150, coolDown));
    Timeline timeline =
        Timeline.of(session, problems(150, coolDown).problem().clock(), 20, CATALOGUE);
    assertThat(timeline.intervals())
        .filteredOn(
            interval ->
                interval.kind() == IntervalKind.COOL_DOWN && interval.exercise().isPresent())
        .isNotEmpty()
        .extracting(Interval::seconds)
        .allMatch(seconds -> seconds >= 10 && seconds <= 30);
  }

  @ParameterizedTest
  @MethodSource("limitations")
  void warmUpMovesRespectTheLimitationAndMoveEveryRegion(String limitation) {
    Session session = around(problems(150, 120).limited(limitation));
    assertThat(session.warmUp())
        .allMatch(move -> move.part() == Part.WARM_UP && move.needs().isEmpty());
    assertThat(session.warmUp()).allMatch(CATALOGUE.limitations().get(limitation)::allows);
    assertThat(session.coolDown()).allMatch(CATALOGUE.limitations().get(limitation)::allows);
    Set<Region> moved =
        session.warmUp().stream()
            .flatMap(move -> move.primary().stream())
            .map(muscle -> CATALOGUE.muscles().get(muscle).region())
            .collect(Collectors.toSet());
    assertThat(moved).containsExactlyInAnyOrder(Region.values());
  }

  @Test
  void theLastWarmUpMoveRehearsesSupersetOne() {
    List<Exercise> moves = around(problems(150, 0)).warmUp();
    assertThat(moves.get(moves.size() - 1).pattern()).isEqualTo("squat");
    assertThat(moves.stream().map(Exercise::root)).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 20, 30, 60, 150, 400})
  void movesFitTheirBlocks(int seconds) {
    Session session = around(problems(seconds, seconds));
    assertThat(session.warmUp().stream().mapToInt(move -> move.seconds().orElseThrow()).sum())
        .isLessThanOrEqualTo(seconds);
    assertThat(session.coolDown().stream().mapToInt(move -> move.seconds().orElseThrow()).sum())
        .isLessThanOrEqualTo(seconds);
  }

  @Test
  void stretchesAreForWhatWorkedMost() {
    List<Exercise> stretches = around(problems(150, 100)).coolDown();
    assertThat(stretches.stream().flatMap(stretch -> stretch.primary().stream()))
        .contains("quadriceps", "hamstrings");
  }
}

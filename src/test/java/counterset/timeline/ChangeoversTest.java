package counterset.timeline;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.plain;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterset.fixture.SessionBuilder;
import counterset.fixture.Trade;
import counterset.model.Changeover;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Item;
import counterset.model.Load;
import counterset.model.Position;
import counterset.model.Session;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Seconds of the small trade: dumbbell 3 on and 2 off, ankle weights 20 and 12, mat 5 and 3, chair
 * 5 and 4, wall 0.
 */
class ChangeoversTest {

  private final Exercise plain = plain("plain");
  private final Exercise dumbbell =
      exercise("dumbbell").withNeed(Trade.DUMBBELL, 1, Load.HEAVY).build();
  private final Exercise again = exercise("again").withNeed(Trade.DUMBBELL, 1, Load.HEAVY).build();
  private final Exercise light = exercise("light").withNeed(Trade.DUMBBELL, 1, Load.LIGHT).build();
  private final Exercise anyLoad = exercise("any-load").withNeed(Trade.DUMBBELL, 1).build();
  private final Exercise two = exercise("two").withNeed(Trade.DUMBBELL, 2, Load.HEAVY).build();
  private final Exercise worn = exercise("worn").withNeed(Trade.ANKLE_WEIGHTS, 1).build();
  private final Exercise allowing =
      exercise("allowing").withAllowsWorn(Trade.ANKLE_WEIGHTS).build();
  private final Exercise mat = exercise("mat").withNeed(Trade.MAT, 1).build();
  private final Exercise wall = exercise("wall").withNeed(Trade.WALL, 1).build();

  /** Changeovers of exercises laid out in supersets of the clock. */
  private static List<Changeover> changeovers(Intervals clock, Exercise... exercises) {
    return Changeovers.of(
        session(clock, exercises), clock, Trade.of(Arrays.stream(exercises).distinct().toList()));
  }

  static Session session(Intervals clock, Exercise... exercises) {
    List<Superset> supersets = new ArrayList<>();
    for (int i = 0; i < exercises.length; i += clock.perSuperset()) {
      int end = Math.min(exercises.length, i + clock.perSuperset());
      supersets.add(new Superset(supersets.size() + 1, List.of(exercises).subList(i, end)));
    }
    return new Session(List.of(), supersets, List.of());
  }

  private static List<Integer> seconds(Exercise... exercises) {
    return changeovers(Intervals.EXPRESS, exercises).stream().map(Changeover::seconds).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "STANDING, SEATED, 5",
    "STANDING, WALL, 5",
    "SEATED, WALL, 5",
    "SUPINE, PRONE, 3",
    "PRONE, SIDE_LYING, 3",
    "QUADRUPED, KNEELING, 3",
    "STANDING, SUPINE, 6",
    "SEATED, KNEELING, 6",
    "WALL, QUADRUPED, 6"
  })
  void theWayFromOnePositionToAnotherTakes3Or5Or6Seconds(Position from, Position to, int seconds) {
    assertThat(Kit.positionSeconds(from, to)).isEqualTo(seconds);
    assertThat(Kit.positionSeconds(to, from)).isEqualTo(seconds);
  }

  @ParameterizedTest
  @EnumSource
  void theSamePositionTakesNoTime(Position position) {
    assertThat(Kit.positionSeconds(position, position)).isZero();
  }

  @Test
  void heldItemsArePickedUpAndPutDown() {
    assertThat(seconds(plain, dumbbell, plain)).containsExactly(3, 2);
    assertThat(seconds(dumbbell, again)).containsExactly(0);
  }

  @Test
  void anotherCountOrLoadIsAnotherItem() {
    assertThat(seconds(dumbbell, light)).containsExactly(2 + 3);
    assertThat(seconds(dumbbell, two)).containsExactly(2 + 3);
    assertThat(seconds(dumbbell, anyLoad)).containsExactly(2 + 3);
  }

  /** Items are bits of a long. */
  @Test
  void sixtyFourDifferentItemsAreTheMost() {
    List<Exercise> exercises = new ArrayList<>();
    for (int count = 1; count <= Long.SIZE; count++) {
      exercises.add(exercise("lift-" + count).withNeed(Trade.DUMBBELL, count).build());
    }
    assertThat(new Kit(Trade.of(exercises), exercises).of(exercises.get(63)).needs())
        .isEqualTo(Long.MIN_VALUE);
    exercises.add(mat);
    assertThatThrownBy(() -> new Kit(Trade.of(exercises), exercises))
        .hasMessageContaining("too many different items (65)");
  }

  @Test
  void wornItemsGoOnWhenFirstNeededAndStayOnWhileAllowed() {
    assertThat(seconds(allowing, worn, allowing, worn, allowing, plain))
        .containsExactly(20, 0, 0, 0, 12);
    assertThat(seconds(worn, plain, worn)).containsExactly(12, 20);
  }

  @Test
  void wornItemsInUseAreKeptWithOthers() {
    Exercise both =
        exercise("both")
            .withNeed(Trade.DUMBBELL, 1, Load.HEAVY)
            .withAllowsWorn(Trade.ANKLE_WEIGHTS)
            .build();
    assertThat(seconds(worn, both, dumbbell)).containsExactly(3, 12);
  }

  @Test
  void placedItemsAreLaidOutAndClearedAway() {
    assertThat(seconds(plain, mat, dumbbell)).containsExactly(5, 3 + 3);
  }

  @Test
  void heldAndPlacedItemsAreNotKeptByAllowance() {
    Exercise oddly = exercise("oddly").withAllowsWorn(Trade.MAT, Trade.DUMBBELL).build();
    assertThat(seconds(mat, oddly)).containsExactly(3);
    assertThat(seconds(dumbbell, oddly)).containsExactly(2);
  }

  @Test
  void whatIsFixedIsNeverHandled() {
    Changeover changeover = changeovers(Intervals.EXPRESS, plain, wall).get(0);
    assertThat(changeover.seconds()).isZero();
    assertThat(changeover.takeOff()).isEmpty();
    assertThat(changeover.putOn()).isEmpty();
  }

  @Test
  void theFirstExerciseIsGotReadyForBeforeTheClockStarts() {
    assertThat(changeovers(Intervals.EXPRESS, worn)).isEmpty();
    assertThat(seconds(worn, allowing)).containsExactly(0);
  }

  @Test
  void itemsTellWhatIsHandled() {
    Changeover changeover = changeovers(Intervals.EXPRESS, two, light).get(0);
    assertThat(changeover.takeOff()).extracting(Item::count).containsExactly(2);
    assertThat(changeover.putOn())
        .extracting(item -> item.load().orElseThrow())
        .containsExactly(Load.LIGHT);
    assertThat(changeover.after()).hasToString("1A");
    assertThat(changeover.from()).isEqualTo(two);
    assertThat(changeover.to()).isEqualTo(light);
  }

  @Test
  void theRoomIsTheSwitchAndFiveSecondsOrTheRestLessFive() {
    Intervals clock = new Intervals(0, 0, 40, 7, 25, 0, 2, 1);
    assertThat(changeovers(clock, plain, dumbbell, again, wall))
        .extracting(Changeover::available)
        .containsExactly(12, 20, 12);
    Intervals rounds = SessionBuilder.clock(2, 2);
    assertThat(changeovers(rounds, plain, dumbbell))
        .extracting(Changeover::available)
        .containsExactly(5, 25, 5);
    assertThat(changeovers(rounds, plain, dumbbell))
        .extracting(Changeover::seconds)
        .containsExactly(3, 2, 3);
    assertThat(changeovers(rounds, plain, dumbbell))
        .extracting(Changeover::round)
        .containsExactly(1, 1, 2);
  }

  @Test
  void triSetsAndStraightSets() {
    assertThat(changeovers(SessionBuilder.clock(3, 1), plain, dumbbell, again, wall))
        .extracting(
            changeover ->
                changeover.after() + " " + changeover.seconds() + "/" + changeover.available())
        .containsExactly("1A 3/5", "1B 0/5", "1C 2/25");
    assertThat(changeovers(SessionBuilder.clock(1, 2), dumbbell, plain))
        .extracting(
            changeover ->
                changeover.after() + " " + changeover.seconds() + "/" + changeover.available())
        .containsExactly("1A 0/25", "1A 2/25", "2A 0/25");
  }

  @Test
  void whatFitsExactlyFits() {
    Changeover fits = changeovers(Intervals.EXPRESS, plain, mat).get(0);
    assertThat(fits.seconds()).isEqualTo(fits.available());
    assertThat(fits.excess()).isZero();
    Exercise lying = exercise("lying").withPosition(Position.SUPINE).build();
    assertThat(changeovers(Intervals.EXPRESS, plain, lying).get(0).excess()).isEqualTo(1);
  }

  @Test
  void whatTakesNoTimeFitsInAnyRest() {
    Intervals restless = new Intervals(0, 0, 40, 0, 0, 0, 1, 1);
    assertThat(changeovers(restless, dumbbell, again).get(0).excess()).isZero();
  }
}

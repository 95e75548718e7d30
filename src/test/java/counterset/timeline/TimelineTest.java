package counterset.timeline;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.timeline.ChangeoversTest.session;
import static org.assertj.core.api.Assertions.assertThat;

import counterset.fixture.SessionBuilder;
import counterset.fixture.Trade;
import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Intervals;
import counterset.model.Part;
import counterset.model.Session;
import counterset.model.Side;
import counterset.model.Sides;
import counterset.model.Superset;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TimelineTest {

  private final Exercise a = plain("a");
  private final Exercise b = plain("b");
  private final Exercise dumbbell = exercise("dumbbell").withNeed(Trade.DUMBBELL, 1).build();
  private final Exercise worn = exercise("worn").withNeed(Trade.ANKLE_WEIGHTS, 1).build();

  private static Timeline timeline(Intervals clock, int minutes, Exercise... exercises) {
    return Timeline.of(
        session(clock, exercises),
        clock,
        minutes,
        Trade.of(Arrays.stream(exercises).distinct().toList()));
  }

  private static List<Integer> rests(Timeline timeline) {
    return timeline.intervals().stream()
        .filter(i -> i.kind() == IntervalKind.REST)
        .map(Interval::seconds)
        .toList();
  }

  private static String text(Interval interval) {
    return interval.start()
        + "-"
        + interval.end()
        + " "
        + interval.kind().id()
        + interval.at().map(at -> " " + at).orElse("");
  }

  @Test
  void anExpressSessionOfTwoSupersets() {
    Intervals clock = new Intervals(10, 150, 45, 0, 30, 20, 2, 1);
    assertThat(timeline(clock, 7, a, b, b, a).intervals())
        .extracting(TimelineTest::text)
        .containsExactly(
            "0-10 get-ready",
            "10-160 warm-up",
            "160-205 work 1A",
            "205-250 work 1B",
            "250-295 rest 1B",
            "295-340 work 2A",
            "340-385 work 2B",
            "385-405 cool-down");
    assertThat(Timeline.plainSeconds(session(clock, a, b, b, a), clock)).isEqualTo(405 - 15);
    assertThat(timeline(clock, 7, a, b, b, a).intervals())
        .allMatch(interval -> interval.round().isEmpty());
  }

  @Test
  void eightSupersetsInTwentyMinutesLeave110Seconds() {
    Exercise[] same = IntStream.range(0, 16).mapToObj(i -> a).toArray(Exercise[]::new);
    Timeline timeline = timeline(Intervals.EXPRESS, 20, same);
    assertThat(Timeline.plainSeconds(session(Intervals.EXPRESS, same), Intervals.EXPRESS))
        .isEqualTo(1090);
    // 110 s for seven rests: 15 s each make 105 s, and 5 s are left.
    assertThat(rests(timeline)).containsOnly(45).hasSize(7);
    assertThat(timeline.unused()).isEqualTo(5);
    assertThat(timeline.end()).isEqualTo(1195);
  }

  @Test
  void leftOverSecondsGoToTheLongestChangeoversFirst() {
    // 3 * 90 + 2 * 30 + 10 + 60 = 400 s of 420 s: 20 s left over, 15 s of them for the second rest
    // with its longer changeover.
    Intervals clock = new Intervals(10, 60, 45, 0, 30, 0, 2, 1);
    assertThat(rests(timeline(clock, 7, a, b, dumbbell, dumbbell, worn, worn)))
        .containsExactly(35, 45);
    assertThat(rests(timeline(clock, 7, worn, worn, dumbbell, dumbbell, a, b)))
        .containsExactly(45, 35);
  }

  @Test
  void ofTwoEqualChangeoversTheEarlierRestGrows() {
    Intervals clock = new Intervals(10, 60, 45, 0, 30, 0, 2, 1);
    Timeline timeline = timeline(clock, 7, a, b, b, a, a, b);
    assertThat(rests(timeline)).containsExactly(45, 35);
    assertThat(timeline.unused()).isZero();
  }

  @Test
  void changeoversInsideASupersetGetNothing() {
    Intervals clock = new Intervals(10, 60, 45, 5, 30, 0, 2, 1);
    Timeline timeline = timeline(clock, 6, a, dumbbell, dumbbell, a);
    assertThat(timeline.intervals())
        .filteredOn(interval -> interval.kind() == IntervalKind.SWITCH)
        .extracting(Interval::seconds)
        .containsExactly(5, 5);
    assertThat(rests(timeline)).containsExactly(45);
    assertThat(timeline.unused()).isEqualTo(360 - 10 - 60 - 2 * 95 - 45);
  }

  @Test
  void aSessionThatIsTooLongIsNotShortened() {
    Timeline timeline = timeline(Intervals.EXPRESS, 5, a, b, b, a);
    assertThat(timeline.end()).isEqualTo(370);
    assertThat(timeline.unused()).isEqualTo(-70);
    assertThat(rests(timeline)).containsExactly(30);
  }

  @Test
  void everyRoundOfASupersetButTheLastOfAllIsFollowedByARest() {
    Intervals clock = SessionBuilder.clock(2, 2);
    assertThat(timeline(clock, 10, a, b, b, a).intervals())
        .filteredOn(
            interval ->
                interval.kind() == IntervalKind.WORK || interval.kind() == IntervalKind.REST)
        .extracting(i -> i.kind().id() + " " + i.at().orElseThrow() + " " + i.round().orElseThrow())
        .containsExactly(
            "work 1A 1",
            "work 1B 1",
            "rest 1B 1",
            "work 1A 2",
            "work 1B 2",
            "rest 1B 2",
            "work 2A 1",
            "work 2B 1",
            "rest 2B 1",
            "work 2A 2",
            "work 2B 2");
  }

  @Test
  void aOneSidedExerciseHasItsLeftSideFirst() {
    Exercise side = oneSided("side");
    Exercise inTurn = exercise("in-turn").withSides(Sides.ALTERNATING).build();
    assertThat(timeline(Intervals.EXPRESS, 10, side, side, a, inTurn).intervals())
        .filteredOn(interval -> interval.kind() == IntervalKind.WORK)
        .extracting(interval -> interval.side().orElseThrow())
        .containsExactly(Side.LEFT, Side.RIGHT, Side.BOTH, Side.ALTERNATING);
  }

  @Test
  void sidesStartAnewInEachSuperset() {
    Exercise side = oneSided("side");
    assertThat(timeline(Intervals.EXPRESS, 10, side, side, a, side).intervals())
        .filteredOn(interval -> interval.kind() == IntervalKind.WORK)
        .extracting(interval -> interval.side().orElseThrow())
        .containsExactly(Side.LEFT, Side.RIGHT, Side.BOTH, Side.LEFT);
  }

  @Test
  void warmUpMovesThatAreTooLongAreCutAtTheEndOfTheBlock() {
    Exercise march = exercise("march").withPart(Part.WARM_UP).withSeconds(30).build();
    Session session =
        new Session(List.of(march, march), List.of(new Superset(1, List.of(a, b))), List.of());
    Intervals clock = new Intervals(10, 40, 45, 0, 30, 0, 2, 1);
    assertThat(Timeline.of(session, clock, 20, Trade.of(a, b)).intervals())
        .extracting(TimelineTest::text)
        .startsWith("0-10 get-ready", "10-40 warm-up", "40-50 warm-up", "50-95 work 1A");
  }

  @Test
  void aSupersetWithAHoleIsShorterAndAnEmptyOneTakesNoTime() {
    Session session =
        new Session(
            List.of(),
            List.of(
                new Superset(1, List.of(a)),
                new Superset(2, List.of()),
                new Superset(3, List.of(b, a))),
            List.of());
    assertThat(Timeline.plainSeconds(session, Intervals.EXPRESS)).isEqualTo(160 + 3 * 45 + 30);
    assertThat(Timeline.of(session, Intervals.EXPRESS, 20, Trade.of(a, b)).intervals())
        .extracting(i -> i.at().map(At::toString).orElse("-"))
        .containsExactly("-", "-", "1A", "1A", "3A", "3B");
  }

  @Test
  void warmUpMovesTakeTheirOwnSecondsAndWhatRemainsOfTheBlockComesFirst() {
    Exercise march = exercise("march").withPart(Part.WARM_UP).withSeconds(30).build();
    Exercise lean =
        exercise("lean").withPart(Part.WARM_UP).withSides(Sides.UNILATERAL).withSeconds(41).build();
    Session session =
        new Session(List.of(march, lean), List.of(new Superset(1, List.of(a, b))), List.of(lean));
    Intervals clock = new Intervals(10, 100, 45, 0, 30, 41, 2, 1);
    assertThat(Timeline.of(session, clock, 20, Trade.of(a, b)).intervals())
        .filteredOn(interval -> interval.kind() != IntervalKind.WORK)
        .extracting(
            interval -> text(interval) + interval.side().map(side -> " " + side.id()).orElse(""))
        .containsExactly(
            "0-10 get-ready",
            "10-39 warm-up",
            "39-69 warm-up both",
            "69-90 warm-up left",
            "90-110 warm-up right",
            "200-221 cool-down left",
            "221-241 cool-down right");
  }
}

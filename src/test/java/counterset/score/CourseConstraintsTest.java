package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.SessionBuilder.clock;
import static counterset.fixture.SessionBuilder.session;
import static counterset.fixture.SmallWants.broadSession;
import static counterset.score.Check.costs;
import static counterset.score.Check.silent;

import counterset.fixture.SessionBuilder;
import counterset.fixture.SmallWants;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Position;
import counterset.model.Sides;
import counterset.model.Target;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The course of a session: what it opens and ends with, the floor, and what must rest. */
class CourseConstraintsTest {

  private final Exercise a = plain("a");
  private final Exercise b = plain("b");
  private final Exercise c = plain("c");
  private final Exercise grip = exercise("grip").withTraits("grip-heavy").build();
  private final Exercise floor = exercise("floor").withPosition(Position.SUPINE).build();
  private final Exercise prone = exercise("prone").withPosition(Position.PRONE).build();
  private final Exercise big = lift("big", "squat");

  private static Exercise lift(String id, String pattern) {
    return exercise(id).withPattern(pattern).withIntensity(3).build();
  }

  /** So many intervals running, and one more after another one. */
  private SessionBuilder running(Exercise tiring, int intervals) {
    SessionBuilder session = broadSession();
    for (int place = 0; place < intervals + 2; place += 2) {
      session.superset(at(tiring, place, intervals), at(tiring, place + 1, intervals));
    }
    return session.superset(a, tiring);
  }

  private Exercise at(Exercise tiring, int place, int intervals) {
    return place < intervals ? tiring : b;
  }

  @Test
  void gripRunCountsIntervalsBeyondTheThird() {
    silent(GripRun.class, running(grip, 3));
    costs(GripRun.class, 1, running(grip, 4));
    costs(GripRun.class, 3, running(grip, 6));
    silent(GripRun.class, running(a, 4));
    silent(GripRun.class, session().superset(grip, grip).superset(grip, grip));
    silent(GripRun.class, broadSession().superset(grip, grip).superset(grip).superset(grip, grip));
  }

  @Test
  void backRunKnowsHingesAndBentOverRows() {
    costs(BackRun.class, 1, running(SmallWants.of("hinge", "hinge"), 4));
    costs(BackRun.class, 1, running(exercise("row").withFamily("bent-over-row").build(), 4));
    silent(BackRun.class, running(SmallWants.of("hinge", "hinge"), 3));
    silent(BackRun.class, running(grip, 4));
  }

  @Test
  void shoulderRunKnowsPushesAndLeaningOnTheHands() {
    costs(ShoulderRun.class, 1, running(SmallWants.of("push", "push"), 4));
    Exercise onHands =
        exercise("on-hands").withPosition(Position.PRONE).withDemand(Joint.WRIST, 2).build();
    costs(ShoulderRun.class, 1, running(onHands, 4));
    silent(ShoulderRun.class, running(onHands, 3));
    silent(ShoulderRun.class, running(prone, 4));
    Exercise standing = exercise("standing").withDemand(Joint.WRIST, 2).build();
    silent(ShoulderRun.class, running(standing, 4));
  }

  @Test
  void oneSidedRunCountsSupersetsBeyondTheSecondRunning() {
    Exercise side = exercise("side").withSides(Sides.UNILATERAL).build();
    SessionBuilder two = session().bothSides(side).bothSides(side);
    silent(OneSidedRun.class, two.superset(a, b).bothSides(side));
    costs(
        OneSidedRun.class,
        1,
        session().superset(a, b).bothSides(side).bothSides(side).bothSides(side));
    SessionBuilder four = session().bothSides(side).bothSides(side).bothSides(side);
    costs(OneSidedRun.class, 2, four.bothSides(side).superset(a, b));
    silent(OneSidedRun.class, session().bothSides(side).bothSides(side).superset().bothSides(side));
  }

  private static SessionBuilder wanting() {
    return session().wanting(SmallWants.sharing(Map.of("squat", 50, "hinge", 30)));
  }

  @Test
  void openSmallAsksForABigLiftInTheFirstPair() {
    silent(OpenSmall.class, wanting().superset(big, a).superset(b, c));
    silent(OpenSmall.class, wanting().superset(a, big).superset(b, c));
    costs(OpenSmall.class, 1, wanting().superset(a, b).superset(c, big));
    costs(OpenSmall.class, 1, wanting().superset(a, b).superset(c).candidates(big));
    silent(OpenSmall.class, wanting().superset(a, b).superset(c));
    silent(OpenSmall.class, wanting().superset(a).superset(c, big));
    silent(OpenSmall.class, wanting().superset(a, b).candidates(big));
    SessionBuilder single = wanting().asked(p -> p.clock(clock(1, 1)));
    silent(OpenSmall.class, single.superset(a).superset(big));
  }

  @Test
  void openSmallAsksForTwoPatternsWhereThereAre() {
    Exercise hinge = lift("hinge", "hinge");
    silent(OpenSmall.class, wanting().superset(hinge, big).superset(b, c));
    costs(OpenSmall.class, 1, wanting().superset(a, big).superset(hinge, c));
    costs(OpenSmall.class, 1, wanting().superset(lift("x", "squat"), big).superset(hinge, c));
    costs(OpenSmall.class, 2, wanting().superset(a, b).superset(hinge, big));
    silent(OpenSmall.class, wanting().superset(a, big).superset(lift("lunge", "lunge"), b));
  }

  @Test
  void openSmallWantsAPairOfABigPatternDoneHard() {
    Exercise sides =
        exercise("sides").withPattern("squat").withIntensity(3).withSides(Sides.UNILATERAL).build();
    costs(OpenSmall.class, 1, wanting().bothSides(sides).superset(big, c));
    Exercise light = exercise("light").withPattern("squat").withIntensity(2).build();
    costs(OpenSmall.class, 1, wanting().superset(light, a).superset(big, c));
    silent(OpenSmall.class, wanting().superset(light, a).superset(b, c));
    costs(OpenSmall.class, 1, wanting().superset(lift("dip", "dip"), a).superset(big, c));
    Exercise skilled =
        exercise("skilled").withPattern("squat").withIntensity(3).withLevel(3).build();
    silent(OpenSmall.class, wanting().superset(a, b).superset(c).candidates(skilled));
  }

  /** Where no pattern that opens sessions is wanted, as for the arms, any work of two opens. */
  @Test
  void openSmallTakesWhatThereIs() {
    Map<String, Integer> arms = Map.of("dip", 50, "calf", 50);
    Exercise dip = exercise("dip").withPattern("dip").withIntensity(2).build();
    Exercise calf = exercise("calf").withPattern("calf").withIntensity(2).build();
    silent(OpenSmall.class, wanting(arms).superset(dip, calf).superset(a, b));
    costs(OpenSmall.class, 1, wanting(arms).superset(dip, a).superset(calf, b));
    Exercise plank = exercise("plank").withPattern("brace").withIntensity(2).build();
    silent(OpenSmall.class, wanting(Map.of("brace", 50)).superset(a, b).superset(plank));
  }

  private static SessionBuilder wanting(Map<String, Integer> shares) {
    return session().wanting(SmallWants.sharing(shares));
  }

  @Test
  void hardFinishCountsABigLiftAtTheEnd() {
    costs(HardFinish.class, 1, wanting().superset(a, b).superset(c).superset(a, big));
    costs(HardFinish.class, 1, wanting().superset(a, b).superset(c).superset(big, big));
    silent(HardFinish.class, wanting().superset(a, b).superset(c, big).superset(a, b));
    silent(HardFinish.class, wanting().superset(a, b).superset(c).superset(lift("dip", "dip")));
    silent(HardFinish.class, wanting().superset(a, b).superset(c, big));
  }

  @Test
  void floorEarlyCountsSupersetsOffTheFloorAfterFloorWork() {
    silent(FloorEarly.class, session().superset(a, b).superset(floor, prone));
    silent(FloorEarly.class, session().superset(floor, prone).superset(prone, floor));
    costs(FloorEarly.class, 1, session().superset(floor, prone).superset(a, b));
    costs(FloorEarly.class, 2, session().superset(a, floor).superset(a, b).superset(b, c));
    silent(FloorEarly.class, session().superset(a, floor).superset(prone, c));
    silent(FloorEarly.class, session().superset(floor, a).superset(b, c));
    costs(FloorEarly.class, 1, session().superset(a, floor).superset().superset(null, b));
    silent(FloorEarly.class, session().superset(floor, floor));
  }

  @Test
  void turnOverCountsTurnsOnTheFloor() {
    Exercise sitting = exercise("sitting").withPosition(Position.FLOOR_SEATED).build();
    Exercise aside = exercise("aside").withPosition(Position.SIDE_LYING).build();
    Exercise fours = exercise("fours").withPosition(Position.QUADRUPED).build();
    costs(TurnOver.class, 1, session().superset(floor, prone));
    costs(TurnOver.class, 2, session().superset(floor, aside).superset(prone, fours));
    silent(TurnOver.class, session().superset(floor, sitting).superset(a, prone));
    silent(TurnOver.class, session().superset(prone, fours).superset(a, floor));
  }

  @Test
  void floorEarlyLetsTheUpperBodyPressFirst() {
    SessionBuilder upper =
        session().asked(p -> p.targets(new Target("chest", 1, 1), new Target("upper-back", 1, 1)));
    silent(FloorEarly.class, upper.superset(floor, prone).superset(a, b));
    SessionBuilder mixed =
        session().asked(p -> p.targets(new Target("chest", 1, 1), new Target("calves", 1, 1)));
    costs(FloorEarly.class, 1, mixed.superset(floor, prone).superset(a, b));
  }
}

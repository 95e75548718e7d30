package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.SessionBuilder.session;
import static counterset.fixture.SmallWants.broadSession;
import static counterset.fixture.SmallWants.of;
import static counterset.score.Check.costs;
import static counterset.score.Check.silent;

import counterset.fixture.Problems;
import counterset.fixture.SessionBuilder;
import counterset.fixture.SmallWants;
import counterset.fixture.Trade;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Sides;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Movement patterns that are missing, come too often, or follow each other. */
class PatternConstraintsTest {

  private final Exercise a = plain("a");
  private final Exercise b = plain("b");
  private final Exercise squat = of("squat", "squat");
  private final Exercise hinge = of("hinge", "hinge");

  private static SessionBuilder wanting(int squat, int hinge) {
    return session().wanting(SmallWants.sharing(Map.of("squat", squat, "hinge", hinge)));
  }

  @Test
  void patternMissingCountsWantedPatternsWithoutAWorkingSet() {
    silent(PatternMissing.class, wanting(50, 50).superset(squat, hinge));
    costs(PatternMissing.class, 1, wanting(50, 50).superset(squat, a).candidates(hinge));
    costs(PatternMissing.class, 2, wanting(50, 50).superset(b, a).candidates(hinge, squat));
    silent(PatternMissing.class, session().superset(b, a).candidates(hinge, squat));
    Exercise easy = exercise("easy").withPattern("hinge").withIntensity(1).build();
    costs(PatternMissing.class, 1, wanting(50, 50).superset(squat, easy).candidates(hinge));
    Exercise rare = exercise("rare").withPattern("hinge").withStanding(1).build();
    costs(PatternMissing.class, 1, wanting(50, 50).superset(squat, rare).candidates(hinge));
  }

  /** Three quarters of a place are about one: of two places, 38 parts of 100 but not 37. */
  @Test
  void patternMissingWantsWhatComesToAboutOnePlace() {
    costs(PatternMissing.class, 1, wanting(50, 38).superset(squat, a).candidates(hinge));
    silent(PatternMissing.class, wanting(50, 37).superset(squat, a).candidates(hinge));
    costs(PatternMissing.class, 1, wanting(50, 19).superset(squat).superset().candidates(hinge));
    silent(PatternMissing.class, wanting(50, 18).superset(squat).superset().candidates(hinge));
  }

  @Test
  void patternMissingAsksForNothingThatCannotBeDone() {
    silent(PatternMissing.class, wanting(50, 50).superset(squat, a));
    Exercise loaded = exercise("loaded").withPattern("hinge").withNeed(Trade.DUMBBELL, 1).build();
    silent(PatternMissing.class, wanting(50, 50).superset(squat, a).candidates(loaded));
    costs(
        PatternMissing.class,
        1,
        wanting(50, 50)
            .asked(p -> p.owning(Problems.two(Trade.DUMBBELL)))
            .superset(squat, a)
            .candidates(loaded));
    Exercise rare = exercise("rare").withPattern("hinge").withStanding(1).build();
    silent(PatternMissing.class, wanting(50, 50).superset(squat, a).candidates(rare));
    Exercise sides = exercise("sides").withPattern("hinge").withSides(Sides.UNILATERAL).build();
    SessionBuilder single = wanting(50, 50).asked(p -> p.clock(SessionBuilder.clock(1, 1)));
    silent(PatternMissing.class, single.superset(squat).superset(a).candidates(sides));
  }

  @Test
  void patternMissingLooksAtWhatATrackDoesAndCanDo() {
    Exercise deep = exercise("deep").withPattern("hinge").withDemand(Joint.KNEE, 2).build();
    SessionBuilder knees = wanting(50, 50).asked(p -> p.tracks(Set.of("sore-knees")));
    silent(PatternMissing.class, knees.superset(squat, deep).instead(0, "1B", a));
    SessionBuilder able = wanting(50, 50).asked(p -> p.tracks(Set.of("sore-knees")));
    able.superset(squat, deep).candidates(hinge);
    costs(PatternMissing.class, 1, able.instead(0, "1B", a));
    silent(PatternMissing.class, able.instead(0, "1B", hinge));
  }

  private static Exercise cousin(String id) {
    return exercise(id).withFamily("family").build();
  }

  @Test
  void twinCountsExercisesOfAMovementBeyondTheFirst() {
    silent(Twin.class, session().superset(a, b));
    costs(Twin.class, 1, session().superset(cousin("one"), cousin("two")));
    costs(Twin.class, 1, session().superset(a, cousin("one")).superset(cousin("two"), b));
    costs(Twin.class, 2, session().superset(cousin("one"), cousin("two")).superset(cousin("x")));
    costs(Twin.class, 1, session().superset(a, b).superset(a));
    silent(Twin.class, session().bothSides(oneSided("side")));
  }

  /** One wanted pattern and six places: half of them may be one movement. */
  @Test
  void twinAllowsMoreWhereFewPatternsAreWanted() {
    SessionBuilder three = wanting(100, 0).superset(front("one"), front("two"));
    silent(Twin.class, three.superset(front("three"), hinge).superset(a, b));
    SessionBuilder four = wanting(100, 0).superset(front("one"), front("two"));
    costs(Twin.class, 1, four.superset(front("three"), front("four")).superset(hinge, b));
    SessionBuilder less = wanting(50, 50).superset(front("one"), front("two"));
    costs(Twin.class, 1, less.superset(front("three"), hinge).superset(a, b));
  }

  private static Exercise front(String id) {
    return exercise(id).withPattern("squat").withFamily("front-squat").build();
  }

  /** Six places of which half are due, at 0.85 exercises a place: a fourth is one too many. */
  @Test
  void sameRootCountsExercisesBeyondTheShare() {
    silent(SameRoot.class, squats(3, 6));
    costs(SameRoot.class, 1, squats(4, 6));
    costs(SameRoot.class, 3, squats(6, 6));
    costs(SameRoot.class, 1, wanting(27, 0).superset(of("x", "squat"), squat).superset(a, null));
    silent(SameRoot.class, wanting(50, 0).superset(of("x", "squat"), squat).superset(a, null));
    silent(SameRoot.class, session().superset(of("x", "squat"), squat));
    Exercise sides = exercise("sides").withPattern("squat").withSides(Sides.UNILATERAL).build();
    silent(SameRoot.class, wanting(20, 0).bothSides(sides));
  }

  /** Nothing here hinges, so the bridge gets the places of both. */
  @Test
  void sharesThatNothingFillsGoToTheLargestOfTheirGroup() {
    Map<String, Integer> wants = Map.of("hinge", 40, "bridge", 20, "squat", 10);
    Exercise bridge = of("bridge", "bridge");
    Exercise more = of("more", "bridge");
    costs(SameRoot.class, 1, sharing(wants).superset(bridge, more).candidates(hinge));
    silent(SameRoot.class, sharing(wants).superset(bridge, more).superset(squat));
    silent(Crowded.class, sharing(wants).superset(squat, a).candidates(bridge));
  }

  private static SessionBuilder sharing(Map<String, Integer> shares) {
    return session().wanting(SmallWants.sharing(shares));
  }

  private static SessionBuilder squats(int squats, int places) {
    SessionBuilder session = wanting(50, 0).candidates(of("other-squat", "squat"));
    for (int place = 0; place < places; place += 2) {
      session.superset(squat(place, squats), squat(place + 1, squats));
    }
    return session;
  }

  private static Exercise squat(int place, int squats) {
    return place < squats ? of("squat-" + place, "squat") : null;
  }

  /** Half of six places are three: one more is free, and one less. */
  @Test
  void crowdedSquaresHalfPlacesBesideTheShare() {
    silent(Crowded.class, squats(3, 6));
    silent(Crowded.class, squats(4, 6));
    costs(Crowded.class, 4, squats(5, 6));
    costs(Crowded.class, 16, squats(6, 6));
    silent(Crowded.class, squats(2, 6));
    // 1.6 halves too few, squared: 2.56.
    costs(Crowded.class, 3, squats(1, 6));
    costs(Crowded.class, 13, squats(0, 6));
  }

  @Test
  void crowdedLeavesNoRoomToPatternsWithoutAShare() {
    costs(Crowded.class, 4, squats(3, 6).superset(null, a));
    silent(Crowded.class, session().superset(a, b).superset(squat));
  }

  @Test
  void crowdedTakesAOneSidedExerciseForOneAndAHalf() {
    Exercise sides = exercise("sides").withPattern("squat").withSides(Sides.UNILATERAL).build();
    // Of eight places four are due: 11 halves, 8 due and 2 free.
    costs(Crowded.class, 1, squats(4, 6).bothSides(sides));
  }

  @Test
  void patternAgainLooksAcrossRests() {
    Exercise other = of("other", "squat");
    costs(PatternAgain.class, 1, broadSession().superset(a, squat).superset(other, b));
    silent(PatternAgain.class, broadSession().superset(squat, a).superset(other, b));
    silent(PatternAgain.class, broadSession().superset(squat, other));
    silent(PatternAgain.class, broadSession().superset(a, squat).superset(hinge, b));
    costs(PatternAgain.class, 1, wanting(50, 50).superset(a, squat).superset(other, b));
  }

  @Test
  void pairAgainCountsSupersetsThatPairTheSameLegPatterns() {
    SessionBuilder once = broadSession().superset(squat, hinge);
    costs(
        PairAgain.class,
        1,
        once.superset(a, b).superset(of("more", "hinge"), of("other", "squat")));
    silent(
        PairAgain.class, broadSession().superset(squat, hinge).superset(of("other", "squat"), a));
    silent(
        PairAgain.class, broadSession().superset(squat, of("other", "squat")).superset(hinge, a));
    SessionBuilder few = wanting(50, 50).superset(squat, hinge);
    silent(PairAgain.class, few.superset(of("other", "squat"), of("more", "hinge")));
  }

  @Test
  void isoSideCountsSupersetsOfSmallOneSidedWork() {
    Exercise small = exercise("small").withSides(Sides.UNILATERAL).withOneJoint().build();
    Exercise more = exercise("more").withSides(Sides.UNILATERAL).withOneJoint().build();
    costs(IsoSide.class, 1, session().bothSides(small));
    costs(IsoSide.class, 2, session().bothSides(small, more));
    silent(IsoSide.class, session().bothSides(oneSided("large")));
    silent(IsoSide.class, session().superset(exercise("both").withOneJoint().build(), a));
    silent(IsoSide.class, session().asked(SmallWants::forTheLegs).bothSides(small));
  }
}

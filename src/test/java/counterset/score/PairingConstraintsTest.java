package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
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
import counterset.model.Pairing;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PairingConstraintsTest {

  private final Exercise extension = exercise("extension").withPrimary("quadriceps").build();
  private final Exercise curl = exercise("curl").withPrimary("hamstrings").build();
  private final Exercise press = exercise("press").withPrimary("chest").build();
  private final Exercise row = exercise("row").withPrimary("upper-back").build();
  private final Exercise opener = exercise("opener").withPrimary("hip-abductors").build();
  private final Exercise another = exercise("another").withPrimary("quadriceps").build();
  private final Exercise sides = oneSided("sides");

  private static SessionBuilder wanting() {
    return session().wanting(SmallWants.sharing(Map.of("squat", 100)));
  }

  @Test
  void pairWorthCostsByPattern() {
    Exercise squat = SmallWants.of("squat", "squat");
    Exercise hinge = of("hinge", "hamstrings");
    Exercise push = of("push", "chest");
    Exercise dip = of("dip", "triceps");
    silent(PairFit.class, wanting().superset(squat, hinge));
    silent(PairFit.class, wanting().superset(hinge, squat));
    costs(PairFit.class, 4, wanting().superset(squat, push));
    costs(PairFit.class, 13, wanting().superset(push, dip));
    costs(PairFit.class, 4, wanting().bothSides(sides));
    costs(PairFit.class, 8, wanting().superset(squat, push).bothSides(sides));
  }

  @Test
  void pairWorthFollowsTheWishOfTheCoach() {
    SessionBuilder same = session().asked(p -> p.pairing(Pairing.COMPOUND));
    silent(PairFit.class, same.superset(extension, another));
    SessionBuilder apart = session().asked(p -> p.pairing(Pairing.COMPOUND));
    costs(PairFit.class, 12, apart.superset(extension, curl));
    SessionBuilder both = session().asked(p -> p.pairing(Pairing.COMPOUND));
    costs(PairFit.class, 4, both.bothSides(sides));
    SessionBuilder free = wanting().asked(p -> p.pairing(Pairing.FREE));
    silent(PairFit.class, free.superset(of("push", "chest"), of("dip", "chest")).bothSides(sides));
  }

  @Test
  void pairWorthWantsTheWholeSupersetAndCountsItOnce() {
    Exercise push = of("push", "chest");
    Exercise dip = of("dip", "triceps");
    silent(PairFit.class, wanting().superset(push).superset(null, dip));
    SessionBuilder single = wanting().asked(p -> p.clock(clock(1, 1)));
    silent(PairFit.class, single.superset(push).superset(dip));
    costs(PairFit.class, 13, wanting().asked(p -> p.clock(clock(2, 3))).superset(push, dip));
  }

  @Test
  void pairWorthAddsTheLinksOfATriSet() {
    Exercise push = of("push", "chest");
    Exercise dip = of("dip", "triceps");
    Exercise squat = SmallWants.of("squat", "squat");
    SessionBuilder triSet = wanting().asked(p -> p.clock(clock(3, 1)));
    costs(PairFit.class, 13 + 4, triSet.superset(push, dip, squat));
    SessionBuilder hole = wanting().asked(p -> p.clock(clock(3, 1)));
    silent(PairFit.class, hole.superset(push, dip));
  }

  private static Exercise of(String pattern, String muscle) {
    return exercise(pattern).withPattern(pattern).withPrimary(muscle).build();
  }

  @Test
  void sameMuscleInARowLooksAcrossRests() {
    costs(SameMuscleInARow.class, 6, broadSession().superset(curl, extension).superset(another));
    silent(SameMuscleInARow.class, broadSession().superset(extension, another));
    silent(SameMuscleInARow.class, broadSession().superset(extension, curl).superset(another));
    costs(SameMuscleInARow.class, 6, broadSession().superset(extension).superset(another, press));
    costs(SameMuscleInARow.class, 6, broadSession().bothSides(sides).superset(extension, curl));
  }

  @Test
  void sameMuscleInARowCostsLessWhereFewPatternsAreWanted() {
    costs(SameMuscleInARow.class, 1, session().superset(curl, extension).superset(another, press));
  }

  @Test
  void sameMuscleInARowLooksAtPrimaryMuscles() {
    Exercise two = exercise("two").withPrimary("quadriceps", "hamstrings").build();
    Exercise both = exercise("both").withPrimary("quadriceps", "hamstrings").build();
    Exercise helped = exercise("helped").withPrimary("chest").withSecondary("quadriceps").build();
    costs(SameMuscleInARow.class, 6, broadSession().superset(two).superset(both));
    costs(SameMuscleInARow.class, 6, broadSession().superset(two).superset(curl));
    silent(SameMuscleInARow.class, broadSession().superset(extension).superset(helped));
    silent(
        SameMuscleInARow.class,
        broadSession()
            .asked(p -> p.pairing(Pairing.COMPOUND))
            .superset(extension)
            .superset(another));
    costs(
        SameMuscleInARow.class,
        6,
        broadSession().asked(p -> p.pairing(Pairing.FREE)).superset(extension).superset(another));
  }

  @Test
  void jointAgainCountsJointsStrainedBeforeAndAfterARest() {
    silent(JointAgain.class, strained(straining("a", 1, 0), straining("b", 3, 0)));
    costs(JointAgain.class, 1, strained(straining("a", 2, 0), straining("b", 2, 1)));
    costs(JointAgain.class, 2, strained(straining("a", 2, 3), straining("b", 3, 2)));
    silent(JointAgain.class, strained(straining("a", 2, 0), straining("b", 0, 2)));
    silent(JointAgain.class, broadSession().superset(straining("a", 2, 0), straining("b", 2, 0)));
    silent(
        JointAgain.class,
        broadSession().superset(straining("a", 2, 0), curl).superset(straining("b", 2, 0)));
  }

  @Test
  void jointAgainAsksNothingWhereFewPatternsAreWanted() {
    silent(
        JointAgain.class, session().superset(straining("a", 2, 0)).superset(straining("b", 2, 0)));
  }

  private static SessionBuilder strained(Exercise before, Exercise after) {
    return broadSession().superset(before).superset(after);
  }

  private static Exercise straining(String id, int knee, int hip) {
    return exercise(id).withDemand(Joint.KNEE, knee).withDemand(Joint.HIP, hip).build();
  }

  @Test
  void oneSidedShareIs15To50Of100() {
    costs(OneSidedShare.class, 1, supersets(7, 0));
    silent(OneSidedShare.class, supersets(7, 1));
    silent(OneSidedShare.class, supersets(4, 2));
    costs(OneSidedShare.class, 1, supersets(4, 3));
    costs(OneSidedShare.class, 2, supersets(14, 0));
    silent(OneSidedShare.class, supersets(8, 4));
    costs(OneSidedShare.class, 4, supersets(8, 8));
  }

  @Test
  void oneSidedShareIsLargerForTheLegs() {
    costs(OneSidedShare.class, 2, legs(5, 0));
    costs(OneSidedShare.class, 1, legs(5, 1));
    silent(OneSidedShare.class, legs(5, 2));
    silent(OneSidedShare.class, legs(5, 4));
    costs(OneSidedShare.class, 1, legs(5, 5));
  }

  private SessionBuilder legs(int all, int oneSided) {
    return supersets(all, oneSided).asked(SmallWants::forTheLegs);
  }

  @Test
  void oneSidedShareRoundsInFavour() {
    silent(OneSidedShare.class, supersets(6, 0));
    silent(OneSidedShare.class, supersets(5, 3));
    costs(OneSidedShare.class, 1, supersets(5, 4));
  }

  @Test
  void oneSidedShareCountsWholeSupersetsOfTwoPositions() {
    SessionBuilder half = legs(1, 1).superset(sides).superset();
    costs(OneSidedShare.class, 1, half.superset(curl, press).superset());
    SessionBuilder triSets = legs(0, 0).asked(p -> p.clock(clock(3, 1)));
    silent(OneSidedShare.class, triSets.superset(extension, curl, press).superset().superset());
  }

  private SessionBuilder supersets(int all, int oneSided) {
    SessionBuilder session = session();
    for (int i = 0; i < all; i++) {
      if (i < oneSided) {
        session.bothSides(oneSided("side-" + i));
      } else {
        session.superset(plain("first-" + i), plain("second-" + i));
      }
    }
    return session;
  }
}

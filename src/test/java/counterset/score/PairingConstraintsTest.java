package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.SessionBuilder.clock;
import static counterset.fixture.SessionBuilder.session;
import static counterset.score.Check.costs;
import static counterset.score.Check.earns;
import static counterset.score.Check.silent;

import counterset.fixture.SessionBuilder;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Pairing;
import counterset.model.Sides;
import org.junit.jupiter.api.Test;

class PairingConstraintsTest {

  private final Exercise extension = exercise("extension").withPrimary("quadriceps").build();
  private final Exercise curl = exercise("curl").withPrimary("hamstrings").build();
  private final Exercise press = exercise("press").withPrimary("chest").build();
  private final Exercise row = exercise("row").withPrimary("upper-back").build();
  private final Exercise opener = exercise("opener").withPrimary("hip-abductors").build();
  private final Exercise another = exercise("another").withPrimary("quadriceps").build();
  private final Exercise sides = oneSided("sides");

  @Test
  void opposingPairEarnsByKind() {
    earns(OpposingPair.class, 20, session().superset(extension, curl));
    earns(OpposingPair.class, 12, session().superset(extension, press));
    earns(OpposingPair.class, 10, session().superset(sides, sides));
    silent(OpposingPair.class, session().superset(extension, opener));
    silent(OpposingPair.class, session().superset(extension, another));
    earns(
        OpposingPair.class,
        42,
        session().superset(extension, curl).superset(press, opener).bothSides(sides));
  }

  @Test
  void opposingPairFollowsTheWishOfTheCoach() {
    earns(
        OpposingPair.class,
        20,
        session().asked(p -> p.pairing(Pairing.COMPOUND)).superset(extension, another));
    earns(
        OpposingPair.class, 10, session().asked(p -> p.pairing(Pairing.COMPOUND)).bothSides(sides));
    silent(
        OpposingPair.class,
        session().asked(p -> p.pairing(Pairing.COMPOUND)).superset(extension, curl));
    silent(
        OpposingPair.class,
        session().asked(p -> p.pairing(Pairing.COMPOUND)).superset(extension, press));
    silent(
        OpposingPair.class,
        session().asked(p -> p.pairing(Pairing.FREE)).superset(extension, curl).bothSides(sides));
  }

  @Test
  void opposingPairWantsTheWholeSuperset() {
    silent(OpposingPair.class, session().superset(extension).superset(null, curl));
    silent(
        OpposingPair.class,
        session().asked(p -> p.clock(clock(1, 1))).superset(extension).superset(curl));
    earns(
        OpposingPair.class,
        20,
        session().asked(p -> p.clock(clock(2, 3))).superset(extension, curl));
  }

  @Test
  void opposingPairTakesTheWeakestLinkOfATriSet() {
    earns(
        OpposingPair.class,
        20,
        session().asked(p -> p.clock(clock(3, 1))).superset(extension, curl, another));
    earns(
        OpposingPair.class,
        12,
        session().asked(p -> p.clock(clock(3, 1))).superset(extension, curl, row));
    silent(
        OpposingPair.class,
        session().asked(p -> p.clock(clock(3, 1))).superset(extension, curl, opener));
    silent(
        OpposingPair.class, session().asked(p -> p.clock(clock(3, 1))).superset(extension, curl));
  }

  @Test
  void sameMuscleInARowCosts15InsideAnd6AcrossARest() {
    costs(SameMuscleInARow.class, 15, session().superset(extension, another));
    costs(SameMuscleInARow.class, 6, session().superset(curl, extension).superset(another, press));
    costs(
        SameMuscleInARow.class,
        21,
        session().superset(extension, another).superset(plain("third"), press));
    silent(SameMuscleInARow.class, session().superset(extension, curl).superset(another, press));
  }

  @Test
  void sameMuscleInARowLooksAtPrimaryMusclesOfOtherExercises() {
    Exercise two = exercise("two").withPrimary("quadriceps", "hamstrings").build();
    Exercise both = exercise("both").withPrimary("quadriceps", "hamstrings").build();
    Exercise helped = exercise("helped").withPrimary("chest").withSecondary("quadriceps").build();
    costs(SameMuscleInARow.class, 15, session().superset(two, both));
    costs(SameMuscleInARow.class, 15, session().superset(two, curl));
    silent(SameMuscleInARow.class, session().superset(extension, helped));
    silent(SameMuscleInARow.class, session().superset(sides, sides));
    costs(SameMuscleInARow.class, 6, session().superset(sides, sides).superset(extension, curl));
    costs(SameMuscleInARow.class, 6, session().superset(extension).superset(another));
    silent(
        SameMuscleInARow.class,
        session().asked(p -> p.pairing(Pairing.COMPOUND)).superset(extension, another));
    costs(
        SameMuscleInARow.class,
        15,
        session().asked(p -> p.pairing(Pairing.FREE)).superset(extension, another));
  }

  @Test
  void jointAgainCountsJointsThatBothStrain() {
    silent(JointAgain.class, session().superset(straining("a", 1, 0), straining("b", 3, 0)));
    costs(JointAgain.class, 1, session().superset(straining("a", 2, 0), straining("b", 2, 1)));
    costs(JointAgain.class, 2, session().superset(straining("a", 2, 3), straining("b", 3, 2)));
    silent(JointAgain.class, session().superset(straining("a", 2, 0), straining("b", 0, 2)));
    costs(
        JointAgain.class,
        1,
        session().superset(curl, straining("a", 2, 0)).superset(straining("b", 2, 0)));
    silent(
        JointAgain.class,
        session().superset(straining("a", 2, 0), curl).superset(straining("b", 2, 0)));
  }

  @Test
  void jointAgainForgivesTheSecondSide() {
    Exercise side = exercise("side").withSides(Sides.UNILATERAL).withDemand(Joint.KNEE, 3).build();
    silent(JointAgain.class, session().superset(side, side));
    costs(JointAgain.class, 1, session().superset(side, side).superset(straining("a", 2, 0), curl));
  }

  private static Exercise straining(String id, int knee, int hip) {
    return exercise(id).withDemand(Joint.KNEE, knee).withDemand(Joint.HIP, hip).build();
  }

  @Test
  void oneSidedShareIsAQuarterToAHalf() {
    costs(OneSidedShare.class, 1, supersets(4, 0));
    silent(OneSidedShare.class, supersets(4, 1));
    silent(OneSidedShare.class, supersets(4, 2));
    costs(OneSidedShare.class, 1, supersets(4, 3));
    costs(OneSidedShare.class, 2, supersets(8, 0));
    costs(OneSidedShare.class, 1, supersets(8, 1));
    silent(OneSidedShare.class, supersets(8, 4));
    costs(OneSidedShare.class, 4, supersets(8, 8));
  }

  @Test
  void oneSidedShareRoundsInFavour() {
    silent(OneSidedShare.class, supersets(3, 0));
    silent(OneSidedShare.class, supersets(5, 3));
    costs(OneSidedShare.class, 1, supersets(5, 4));
  }

  @Test
  void oneSidedShareCountsWholeSupersetsOfTwoPositions() {
    costs(
        OneSidedShare.class,
        1,
        session().superset(sides, curl).superset(sides).superset().superset());
    costs(OneSidedShare.class, 1, session().superset(curl, curl).superset().superset().superset());
    SessionBuilder triSets = session().asked(p -> p.clock(clock(3, 1)));
    silent(
        OneSidedShare.class,
        triSets.superset(extension, curl, press).superset().superset().superset());
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

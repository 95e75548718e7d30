package counterset.planning.constraints;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.SessionBuilder.clock;
import static counterset.fixture.SessionBuilder.session;
import static counterset.planning.constraints.Check.costs;
import static counterset.planning.constraints.Check.earns;
import static counterset.planning.constraints.Check.silent;
import static counterset.planning.constraints.SessionConstraint.*;

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
    earns(OPPOSING_PAIR, 20, session().superset(extension, curl));
    earns(OPPOSING_PAIR, 12, session().superset(extension, press));
    earns(OPPOSING_PAIR, 10, session().superset(sides, sides));
    silent(OPPOSING_PAIR, session().superset(extension, opener));
    silent(OPPOSING_PAIR, session().superset(extension, another));
    earns(
        OPPOSING_PAIR,
        42,
        session().superset(extension, curl).superset(press, opener).bothSides(sides));
  }

  @Test
  void opposingPairFollowsTheWishOfTheCoach() {
    earns(
        OPPOSING_PAIR,
        20,
        session().asked(p -> p.pairing(Pairing.COMPOUND)).superset(extension, another));
    earns(OPPOSING_PAIR, 10, session().asked(p -> p.pairing(Pairing.COMPOUND)).bothSides(sides));
    silent(
        OPPOSING_PAIR, session().asked(p -> p.pairing(Pairing.COMPOUND)).superset(extension, curl));
    silent(
        OPPOSING_PAIR,
        session().asked(p -> p.pairing(Pairing.COMPOUND)).superset(extension, press));
    silent(
        OPPOSING_PAIR,
        session().asked(p -> p.pairing(Pairing.FREE)).superset(extension, curl).bothSides(sides));
  }

  @Test
  void opposingPairWantsTheWholeSuperset() {
    silent(OPPOSING_PAIR, session().superset(extension).superset(null, curl));
    silent(
        OPPOSING_PAIR,
        session().asked(p -> p.clock(clock(1, 1))).superset(extension).superset(curl));
    earns(OPPOSING_PAIR, 20, session().asked(p -> p.clock(clock(2, 3))).superset(extension, curl));
  }

  @Test
  void opposingPairTakesTheWeakestLinkOfATriSet() {
    earns(
        OPPOSING_PAIR,
        20,
        session().asked(p -> p.clock(clock(3, 1))).superset(extension, curl, another));
    earns(
        OPPOSING_PAIR,
        12,
        session().asked(p -> p.clock(clock(3, 1))).superset(extension, curl, row));
    silent(
        OPPOSING_PAIR,
        session().asked(p -> p.clock(clock(3, 1))).superset(extension, curl, opener));
    silent(OPPOSING_PAIR, session().asked(p -> p.clock(clock(3, 1))).superset(extension, curl));
  }

  @Test
  void sameMuscleInARowCosts15InsideAnd6AcrossARest() {
    costs(SAME_MUSCLE_IN_A_ROW, 15, session().superset(extension, another));
    costs(SAME_MUSCLE_IN_A_ROW, 6, session().superset(curl, extension).superset(another, press));
    costs(
        SAME_MUSCLE_IN_A_ROW,
        21,
        session().superset(extension, another).superset(plain("third"), press));
    silent(SAME_MUSCLE_IN_A_ROW, session().superset(extension, curl).superset(another, press));
  }

  @Test
  void sameMuscleInARowLooksAtPrimaryMusclesOfOtherExercises() {
    Exercise two = exercise("two").withPrimary("quadriceps", "hamstrings").build();
    Exercise both = exercise("both").withPrimary("quadriceps", "hamstrings").build();
    Exercise helped = exercise("helped").withPrimary("chest").withSecondary("quadriceps").build();
    costs(SAME_MUSCLE_IN_A_ROW, 15, session().superset(two, both));
    costs(SAME_MUSCLE_IN_A_ROW, 15, session().superset(two, curl));
    silent(SAME_MUSCLE_IN_A_ROW, session().superset(extension, helped));
    silent(SAME_MUSCLE_IN_A_ROW, session().superset(sides, sides));
    costs(SAME_MUSCLE_IN_A_ROW, 6, session().superset(sides, sides).superset(extension, curl));
    costs(SAME_MUSCLE_IN_A_ROW, 6, session().superset(extension).superset(another));
    silent(
        SAME_MUSCLE_IN_A_ROW,
        session().asked(p -> p.pairing(Pairing.COMPOUND)).superset(extension, another));
    costs(
        SAME_MUSCLE_IN_A_ROW,
        15,
        session().asked(p -> p.pairing(Pairing.FREE)).superset(extension, another));
  }

  @Test
  void jointAgainCountsJointsThatBothStrain() {
    silent(JOINT_AGAIN, session().superset(straining("a", 1, 0), straining("b", 3, 0)));
    costs(JOINT_AGAIN, 1, session().superset(straining("a", 2, 0), straining("b", 2, 1)));
    costs(JOINT_AGAIN, 2, session().superset(straining("a", 2, 3), straining("b", 3, 2)));
    silent(JOINT_AGAIN, session().superset(straining("a", 2, 0), straining("b", 0, 2)));
    costs(
        JOINT_AGAIN,
        1,
        session().superset(curl, straining("a", 2, 0)).superset(straining("b", 2, 0)));
    silent(
        JOINT_AGAIN, session().superset(straining("a", 2, 0), curl).superset(straining("b", 2, 0)));
  }

  @Test
  void jointAgainForgivesTheSecondSide() {
    Exercise side = exercise("side").withSides(Sides.UNILATERAL).withDemand(Joint.KNEE, 3).build();
    silent(JOINT_AGAIN, session().superset(side, side));
    costs(JOINT_AGAIN, 1, session().superset(side, side).superset(straining("a", 2, 0), curl));
  }

  private static Exercise straining(String id, int knee, int hip) {
    return exercise(id).withDemand(Joint.KNEE, knee).withDemand(Joint.HIP, hip).build();
  }

  @Test
  void oneSidedShareIsAQuarterToAHalf() {
    costs(ONE_SIDED_SHARE, 1, supersets(4, 0));
    silent(ONE_SIDED_SHARE, supersets(4, 1));
    silent(ONE_SIDED_SHARE, supersets(4, 2));
    costs(ONE_SIDED_SHARE, 1, supersets(4, 3));
    costs(ONE_SIDED_SHARE, 2, supersets(8, 0));
    costs(ONE_SIDED_SHARE, 1, supersets(8, 1));
    silent(ONE_SIDED_SHARE, supersets(8, 4));
    costs(ONE_SIDED_SHARE, 4, supersets(8, 8));
  }

  @Test
  void oneSidedShareRoundsInFavour() {
    silent(ONE_SIDED_SHARE, supersets(3, 0));
    silent(ONE_SIDED_SHARE, supersets(5, 3));
    costs(ONE_SIDED_SHARE, 1, supersets(5, 4));
  }

  @Test
  void oneSidedShareCountsWholeSupersetsOfTwoPositions() {
    costs(
        ONE_SIDED_SHARE, 1, session().superset(sides, curl).superset(sides).superset().superset());
    costs(ONE_SIDED_SHARE, 1, session().superset(curl, curl).superset().superset().superset());
    SessionBuilder triSets = session().asked(p -> p.clock(clock(3, 1)));
    silent(
        ONE_SIDED_SHARE, triSets.superset(extension, curl, press).superset().superset().superset());
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

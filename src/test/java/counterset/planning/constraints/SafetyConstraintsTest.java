package counterset.planning.constraints;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.SessionBuilder.clock;
import static counterset.fixture.SessionBuilder.session;
import static counterset.planning.constraints.Check.costs;
import static counterset.planning.constraints.Check.silent;
import static counterset.planning.constraints.SessionConstraint.*;

import counterset.fixture.ExerciseBuilder;
import counterset.fixture.Problems;
import counterset.fixture.SessionBuilder;
import counterset.fixture.Trade;
import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Joint;
import counterset.model.Keep;
import counterset.model.Load;
import counterset.model.Owned;
import counterset.model.Position;
import counterset.model.Sides;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SafetyConstraintsTest {

  private final Exercise a = plain("a");
  private final Exercise b = plain("b");
  private final Exercise c = plain("c");
  private final Exercise left = oneSided("one-sided");

  @Test
  void exerciseRepeatedCountsPairsOfOneExercise() {
    silent(EXERCISE_REPEATED, session().superset(a, b).superset(c, plain("d")));
    costs(EXERCISE_REPEATED, 1, session().superset(a, b).superset(a, c));
    costs(EXERCISE_REPEATED, 1, session().superset(a, a));
    costs(EXERCISE_REPEATED, 3, session().superset(a, b).superset(a, c).superset(a));
  }

  @Test
  void exerciseRepeatedCountsVariantsButNotTheRestOfAFamily() {
    Exercise variant = exercise("a-heavy").withVariantOf("a").build();
    Exercise otherVariant = exercise("a-light").withVariantOf("a").build();
    Exercise relative = exercise("a-relative").withFamily(a.family()).build();
    costs(EXERCISE_REPEATED, 1, session().superset(a, variant));
    costs(EXERCISE_REPEATED, 1, session().superset(variant, b).superset(c, otherVariant));
    silent(EXERCISE_REPEATED, session().superset(a, relative));
  }

  @Test
  void exerciseRepeatedCountsTheSidesOfASupersetOnce() {
    silent(EXERCISE_REPEATED, session().superset(left, left));
    costs(EXERCISE_REPEATED, 1, session().superset(left, left).superset(a, b).superset(left, left));
    costs(EXERCISE_REPEATED, 1, session().superset(a, left).superset(left, b));
  }

  @Test
  void sidesSplitWantsBothPlacesOfOneSuperset() {
    silent(SIDES_SPLIT, session().superset(left, left));
    costs(SIDES_SPLIT, 1, session().superset(left, a));
    costs(SIDES_SPLIT, 1, session().superset(a, left));
    costs(SIDES_SPLIT, 1, session().superset(left));
    costs(SIDES_SPLIT, 2, session().superset(a, left).superset(left, b));
    silent(
        SIDES_SPLIT,
        session().superset(a, b).superset(exercise("x").withSides(Sides.ALTERNATING).build()));
  }

  @Test
  void sidesSplitRulesOneSidedWorkOutOfOtherThanTwoPositions() {
    costs(SIDES_SPLIT, 1, session().asked(p -> p.clock(clock(1, 1))).superset(left).superset(a));
    costs(SIDES_SPLIT, 1, session().asked(p -> p.clock(clock(3, 1))).superset(left, left, a));
    costs(SIDES_SPLIT, 1, session().asked(p -> p.clock(clock(3, 1))).superset(left, left, left));
  }

  @Test
  void equipmentMissingCountsItemsByCountAndLoad() {
    Exercise two = exercise("two").withNeed(Trade.DUMBBELL, 2, Load.HEAVY).build();
    costs(EQUIPMENT_MISSING, 1, session().superset(two, a));
    costs(
        EQUIPMENT_MISSING,
        1,
        session().asked(p -> p.owning(owned(1, Load.HEAVY))).superset(two, a));
    silent(
        EQUIPMENT_MISSING, session().asked(p -> p.owning(owned(2, Load.HEAVY))).superset(two, a));
    silent(
        EQUIPMENT_MISSING, session().asked(p -> p.owning(owned(3, Load.HEAVY))).superset(two, a));
    costs(
        EQUIPMENT_MISSING,
        1,
        session().asked(p -> p.owning(owned(2, Load.MEDIUM))).superset(two, a));
    costs(
        EQUIPMENT_MISSING,
        1,
        session().asked(p -> p.owning(Problems.two(Trade.CHAIR))).superset(two, a));
  }

  @Test
  void equipmentMissingCountsEveryNeedButNothingThatIsAlwaysThere() {
    Exercise much =
        exercise("much")
            .withNeed(Trade.DUMBBELL, 1)
            .withNeed(Trade.CHAIR, 1)
            .withNeed(Trade.WALL, 1)
            .build();
    Exercise oneSided = exercise("x").withNeed(Trade.MAT, 1).withSides(Sides.UNILATERAL).build();
    costs(EQUIPMENT_MISSING, 2, session().superset(much));
    costs(EQUIPMENT_MISSING, 1, session().superset(oneSided, oneSided));
    silent(EQUIPMENT_MISSING, session().superset(exercise("y").withNeed(Trade.WALL, 1).build(), a));
  }

  private static Owned owned(int count, Load load) {
    return new Owned(Trade.DUMBBELL, count, List.of(), EnumSet.of(load));
  }

  @Test
  void unsafeForClientComparesDemandTraitsAndPositions() {
    SessionBuilder[] sessions = new SessionBuilder[4];
    for (int demand = 0; demand < sessions.length; demand++) {
      Exercise exercise =
          exercise("x").withDemand(Joint.KNEE, demand).withDemand(Joint.HIP, 3).build();
      sessions[demand] = session().asked(p -> p.limited("sore-knees")).superset(exercise, a);
    }
    silent(UNSAFE_FOR_CLIENT, sessions[0]);
    silent(UNSAFE_FOR_CLIENT, sessions[1]);
    costs(UNSAFE_FOR_CLIENT, 1, sessions[2]);
    costs(UNSAFE_FOR_CLIENT, 1, sessions[3]);
    ExerciseBuilder jump = exercise("jump").withTraits("jump");
    costs(
        UNSAFE_FOR_CLIENT, 1, session().asked(p -> p.limited("sore-knees")).superset(jump.build()));
    silent(UNSAFE_FOR_CLIENT, session().superset(jump.build()));
  }

  @Test
  void unsafeForClientCountsEveryLimitationAndASupersetOfSidesOnce() {
    ExerciseBuilder kneeOnTheFloor =
        exercise("x").withDemand(Joint.KNEE, 2).withPosition(Position.PRONE);
    Exercise both = kneeOnTheFloor.build();
    costs(
        UNSAFE_FOR_CLIENT,
        2,
        session().asked(p -> p.limited("sore-knees", "no-floor")).superset(both, a));
    costs(UNSAFE_FOR_CLIENT, 1, session().asked(p -> p.limited("no-floor")).superset(both, a));
    Exercise sides = kneeOnTheFloor.withSides(Sides.UNILATERAL).build();
    costs(UNSAFE_FOR_CLIENT, 1, session().asked(p -> p.limited("no-floor")).bothSides(sides));
  }

  @Test
  void clockOverrunCountsSecondsOverTheCap() {
    // Nine supersets take 10 + 140 + 9 * 90 + 8 * 30 = 1200 s with a warm-up of 140 s.
    silent(CLOCK_OVERRUN, nine(139));
    silent(CLOCK_OVERRUN, nine(140));
    costs(CLOCK_OVERRUN, 1, nine(141));
    costs(CLOCK_OVERRUN, 10, nine(150));
    silent(CLOCK_OVERRUN, session().superset(a, b));
  }

  private SessionBuilder nine(int warmUp) {
    SessionBuilder session =
        session().asked(p -> p.clock(new Intervals(10, warmUp, 45, 0, 30, 0, 2, 1)));
    for (int i = 0; i < 9; i++) {
      session.superset(a);
    }
    return session;
  }

  @Test
  void keptMovedCountsKeptPlacesThatHoldSomethingElse() {
    SessionBuilder session =
        session().asked(p -> p.keeping(new Keep(new At(1, 0), "a"))).candidates(a);
    silent(KEPT_MOVED, session.superset(a, b));
    costs(
        KEPT_MOVED, 1, session().asked(p -> p.keeping(new Keep(new At(1, 0), "a"))).superset(b, a));
    costs(
        KEPT_MOVED,
        1,
        session()
            .asked(p -> p.keeping(new Keep(new At(1, 0), "a")))
            .candidates(a)
            .superset(null, b));
    Keep[] two = {new Keep(new At(1, 1), "a"), new Keep(new At(2, 0), "b")};
    costs(KEPT_MOVED, 2, session().asked(p -> p.keeping(two)).superset(a, b).superset(c, c));
    costs(
        KEPT_MOVED, 1, session().asked(p -> p.keeping(new Keep(new At(3, 0), "a"))).superset(a, b));
  }

  @Test
  void aboveLevelCountsExercisesHarderThanTheClientMayDo() {
    silent(ABOVE_LEVEL, session().superset(exercise("x").withLevel(1).build(), a));
    silent(ABOVE_LEVEL, session().superset(exercise("x").withLevel(2).build(), a));
    costs(ABOVE_LEVEL, 1, session().superset(exercise("x").withLevel(3).build(), a));
    costs(ABOVE_LEVEL, 3, session().asked(p -> p.level(1)).superset(a, b).superset(c));
    costs(ABOVE_LEVEL, 1, session().asked(p -> p.level(1)).bothSides(left));
  }

  @Test
  void excludedNamesExercisesFamiliesPatternsAndVariants() {
    Exercise variant = exercise("a-heavy").withVariantOf("a").build();
    for (String name : Set.of("a", "a-family", "a-pattern")) {
      costs(EXCLUDED, 1, session().asked(p -> p.excluding(name)).superset(a, b));
    }
    costs(EXCLUDED, 1, session().asked(p -> p.excluding("a")).superset(variant, b));
    silent(
        EXCLUDED, session().asked(p -> p.excluding("a-heavy")).candidates(variant).superset(a, b));
    silent(EXCLUDED, session().asked(p -> p.excluding("d")).superset(a, b));
    costs(EXCLUDED, 1, session().asked(p -> p.excluding("one-sided")).bothSides(left));
  }
}

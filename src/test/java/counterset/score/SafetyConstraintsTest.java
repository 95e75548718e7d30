package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.SessionBuilder.clock;
import static counterset.fixture.SessionBuilder.session;
import static counterset.score.Check.costs;
import static counterset.score.Check.silent;

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
    silent(ExerciseRepeated.class, session().superset(a, b).superset(c, plain("d")));
    costs(ExerciseRepeated.class, 1, session().superset(a, b).superset(a, c));
    costs(ExerciseRepeated.class, 1, session().superset(a, a));
    costs(ExerciseRepeated.class, 3, session().superset(a, b).superset(a, c).superset(a));
  }

  @Test
  void exerciseRepeatedCountsVariantsButNotTheRestOfAFamily() {
    Exercise variant = exercise("a-heavy").withVariantOf("a").build();
    Exercise otherVariant = exercise("a-light").withVariantOf("a").build();
    Exercise relative = exercise("a-relative").withFamily(a.family()).build();
    costs(ExerciseRepeated.class, 1, session().superset(a, variant));
    costs(ExerciseRepeated.class, 1, session().superset(variant, b).superset(c, otherVariant));
    silent(ExerciseRepeated.class, session().superset(a, relative));
  }

  @Test
  void exerciseRepeatedCountsTheSidesOfASupersetOnce() {
    silent(ExerciseRepeated.class, session().superset(left, left));
    costs(
        ExerciseRepeated.class,
        1,
        session().superset(left, left).superset(a, b).superset(left, left));
    costs(ExerciseRepeated.class, 1, session().superset(a, left).superset(left, b));
  }

  @Test
  void sidesSplitWantsBothPlacesOfOneSuperset() {
    silent(SidesSplit.class, session().superset(left, left));
    costs(SidesSplit.class, 1, session().superset(left, a));
    costs(SidesSplit.class, 1, session().superset(a, left));
    costs(SidesSplit.class, 1, session().superset(left));
    costs(SidesSplit.class, 2, session().superset(a, left).superset(left, b));
    silent(
        SidesSplit.class,
        session().superset(a, b).superset(exercise("x").withSides(Sides.ALTERNATING).build()));
  }

  @Test
  void sidesSplitRulesOneSidedWorkOutOfOtherThanTwoPositions() {
    costs(
        SidesSplit.class, 1, session().asked(p -> p.clock(clock(1, 1))).superset(left).superset(a));
    costs(SidesSplit.class, 1, session().asked(p -> p.clock(clock(3, 1))).superset(left, left, a));
    costs(
        SidesSplit.class, 1, session().asked(p -> p.clock(clock(3, 1))).superset(left, left, left));
  }

  @Test
  void equipmentMissingCountsItemsByCountAndLoad() {
    Exercise two = exercise("two").withNeed(Trade.DUMBBELL, 2, Load.HEAVY).build();
    costs(EquipmentMissing.class, 1, session().superset(two, a));
    costs(
        EquipmentMissing.class,
        1,
        session().asked(p -> p.owning(owned(1, Load.HEAVY))).superset(two, a));
    silent(
        EquipmentMissing.class,
        session().asked(p -> p.owning(owned(2, Load.HEAVY))).superset(two, a));
    silent(
        EquipmentMissing.class,
        session().asked(p -> p.owning(owned(3, Load.HEAVY))).superset(two, a));
    costs(
        EquipmentMissing.class,
        1,
        session().asked(p -> p.owning(owned(2, Load.MEDIUM))).superset(two, a));
    costs(
        EquipmentMissing.class,
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
    costs(EquipmentMissing.class, 2, session().superset(much));
    costs(EquipmentMissing.class, 1, session().superset(oneSided, oneSided));
    silent(
        EquipmentMissing.class,
        session().superset(exercise("y").withNeed(Trade.WALL, 1).build(), a));
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
    silent(UnsafeForClient.class, sessions[0]);
    silent(UnsafeForClient.class, sessions[1]);
    costs(UnsafeForClient.class, 1, sessions[2]);
    costs(UnsafeForClient.class, 1, sessions[3]);
    ExerciseBuilder jump = exercise("jump").withTraits("jump");
    costs(
        UnsafeForClient.class,
        1,
        session().asked(p -> p.limited("sore-knees")).superset(jump.build()));
    silent(UnsafeForClient.class, session().superset(jump.build()));
  }

  @Test
  void unsafeForClientCountsEveryLimitationAndASupersetOfSidesOnce() {
    ExerciseBuilder kneeOnTheFloor =
        exercise("x").withDemand(Joint.KNEE, 2).withPosition(Position.PRONE);
    Exercise both = kneeOnTheFloor.build();
    costs(
        UnsafeForClient.class,
        2,
        session().asked(p -> p.limited("sore-knees", "no-floor")).superset(both, a));
    costs(UnsafeForClient.class, 1, session().asked(p -> p.limited("no-floor")).superset(both, a));
    Exercise sides = kneeOnTheFloor.withSides(Sides.UNILATERAL).build();
    costs(UnsafeForClient.class, 1, session().asked(p -> p.limited("no-floor")).bothSides(sides));
  }

  @Test
  void clockOverrunCountsSecondsOverTheCap() {
    // Nine supersets take 10 + 140 + 9 * 90 + 8 * 30 = 1200 s with a warm-up of 140 s.
    silent(ClockOverrun.class, nine(139));
    silent(ClockOverrun.class, nine(140));
    costs(ClockOverrun.class, 1, nine(141));
    costs(ClockOverrun.class, 10, nine(150));
    silent(ClockOverrun.class, session().superset(a, b));
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
    silent(KeptMoved.class, session.superset(a, b));
    costs(
        KeptMoved.class,
        1,
        session().asked(p -> p.keeping(new Keep(new At(1, 0), "a"))).superset(b, a));
    costs(
        KeptMoved.class,
        1,
        session()
            .asked(p -> p.keeping(new Keep(new At(1, 0), "a")))
            .candidates(a)
            .superset(null, b));
    Keep[] two = {new Keep(new At(1, 1), "a"), new Keep(new At(2, 0), "b")};
    costs(KeptMoved.class, 2, session().asked(p -> p.keeping(two)).superset(a, b).superset(c, c));
    costs(
        KeptMoved.class,
        1,
        session().asked(p -> p.keeping(new Keep(new At(3, 0), "a"))).superset(a, b));
  }

  @Test
  void aboveLevelCountsExercisesHarderThanTheClientMayDo() {
    silent(AboveLevel.class, session().superset(exercise("x").withLevel(1).build(), a));
    silent(AboveLevel.class, session().superset(exercise("x").withLevel(2).build(), a));
    costs(AboveLevel.class, 1, session().superset(exercise("x").withLevel(3).build(), a));
    costs(AboveLevel.class, 3, session().asked(p -> p.level(1)).superset(a, b).superset(c));
    costs(AboveLevel.class, 1, session().asked(p -> p.level(1)).bothSides(left));
  }

  @Test
  void excludedNamesExercisesFamiliesPatternsAndVariants() {
    Exercise variant = exercise("a-heavy").withVariantOf("a").build();
    for (String name : Set.of("a", "a-family", "a-pattern")) {
      costs(Excluded.class, 1, session().asked(p -> p.excluding(name)).superset(a, b));
    }
    costs(Excluded.class, 1, session().asked(p -> p.excluding("a")).superset(variant, b));
    silent(
        Excluded.class,
        session().asked(p -> p.excluding("a-heavy")).candidates(variant).superset(a, b));
    silent(Excluded.class, session().asked(p -> p.excluding("d")).superset(a, b));
    costs(Excluded.class, 1, session().asked(p -> p.excluding("one-sided")).bothSides(left));
  }
}

package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.oneSided;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.SessionBuilder.clock;
import static counterset.fixture.SessionBuilder.session;
import static counterset.score.Check.costs;
import static counterset.score.Check.silent;

import counterset.fixture.Problems;
import counterset.fixture.SessionBuilder;
import counterset.fixture.Trade;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Owned;
import counterset.model.Position;
import counterset.model.Sides;
import counterset.model.Target;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class CoverageConstraintsTest {

  private final Exercise quads = exercise("quads").withPrimary("quadriceps").build();
  private final Exercise moreQuads = exercise("more-quads").withPrimary("quadriceps").build();
  private final Exercise thirdQuads = exercise("third-quads").withPrimary("quadriceps").build();
  private final Exercise hams = exercise("hams").withPrimary("hamstrings").build();
  private final Exercise helped =
      exercise("helped").withPrimary("chest").withSecondary("quadriceps").build();
  private final Exercise chest = exercise("chest").withPrimary("chest").build();

  private SessionBuilder wanting(int minSets) {
    return session().asked(p -> p.targets(new Target("quadriceps", 1, minSets)));
  }

  @Test
  void targetUncoveredCountsMissingDirectSets() {
    silent(TargetUncovered.class, wanting(2).superset(quads, moreQuads).superset(thirdQuads, hams));
    silent(TargetUncovered.class, wanting(2).superset(quads, moreQuads));
    costs(TargetUncovered.class, 1, wanting(2).superset(quads, hams));
    costs(TargetUncovered.class, 2, wanting(2).superset(helped, hams));
    costs(TargetUncovered.class, 2, wanting(2).superset());
    silent(TargetUncovered.class, wanting(0).superset(chest, hams));
  }

  @Test
  void targetUncoveredCountsRoundsAndBothSidesAsOneSet() {
    silent(
        TargetUncovered.class, wanting(2).asked(p -> p.clock(clock(2, 2))).superset(quads, hams));
    costs(
        TargetUncovered.class,
        1,
        wanting(3).asked(p -> p.clock(clock(2, 2))).superset(quads, hams));
    costs(TargetUncovered.class, 1, wanting(2).bothSides(oneSided("side")));
    silent(TargetUncovered.class, wanting(1).bothSides(oneSided("side")));
  }

  @Test
  void targetUncoveredAddsTheTargets() {
    Target[] targets = {
      new Target("hamstrings", 1, 1), new Target("chest", 1, 2), new Target("quadriceps", 1, 1)
    };
    costs(
        TargetUncovered.class,
        3,
        session().asked(p -> p.targets(targets)).superset(quads, moreQuads));
  }

  private SessionBuilder sharing(int quadriceps, int hamstrings) {
    return session()
        .asked(
            p ->
                p.targets(
                    new Target("quadriceps", quadriceps, 0),
                    new Target("hamstrings", hamstrings, 0)));
  }

  @Test
  void unevenVolumeSquaresTheDistanceFromTheShare() {
    silent(UnevenVolume.class, sharing(1, 1).superset(quads, hams));
    // 1 and 0 sets are half a set away each: 0.25, rounded to 0.
    silent(UnevenVolume.class, sharing(1, 1).superset(quads, chest));
    // 1.5 and 0 sets are 0.75 away each: 0.5625, rounded to 1.
    costs(UnevenVolume.class, 2, sharing(1, 1).superset(quads, helped));
    costs(UnevenVolume.class, 2, sharing(1, 1).superset(quads, moreQuads));
    // 3 and 0 sets are 1.5 away each: 2.25, rounded to 2.
    costs(UnevenVolume.class, 4, sharing(1, 1).superset(quads, moreQuads).superset(thirdQuads));
    silent(UnevenVolume.class, sharing(1, 1).superset(chest));
    silent(UnevenVolume.class, sharing(1, 1).superset());
  }

  @Test
  void unevenVolumeFollowsTheEmphasis() {
    silent(UnevenVolume.class, sharing(2, 1).superset(quads, hams).superset(moreQuads));
    // Shares of 3 sets are 1 and 2; a set away each.
    costs(UnevenVolume.class, 2, sharing(1, 2).superset(quads, hams).superset(moreQuads));
  }

  @Test
  void unevenVolumeCountsRoundsAndBothSidesAsOneSet() {
    costs(
        UnevenVolume.class,
        2,
        sharing(1, 1).asked(p -> p.clock(clock(2, 2))).superset(quads, chest));
    silent(UnevenVolume.class, sharing(1, 1).bothSides(oneSided("side")).superset(hams, chest));
  }

  @Test
  void supersetEmptyCountsSupersetsWithAHole() {
    silent(SupersetEmpty.class, session().superset(quads, hams));
    costs(SupersetEmpty.class, 1, session().superset(quads, hams).superset(chest));
    costs(SupersetEmpty.class, 1, session().superset(quads, hams).superset());
    costs(SupersetEmpty.class, 3, session().superset(null, hams).superset().superset(chest));
    costs(SupersetEmpty.class, 1, session().asked(p -> p.clock(clock(3, 1))).superset(quads, hams));
  }

  private static Exercise lift(String id, String pattern, int intensity, String... primary) {
    return exercise(id).withPattern(pattern).withIntensity(intensity).withPrimary(primary).build();
  }

  private SessionBuilder training(String... muscles) {
    Target[] targets =
        Arrays.stream(muscles).map(muscle -> new Target(muscle, 1, 0)).toArray(Target[]::new);
    return session().asked(p -> p.targets(targets));
  }

  @Test
  void mainLiftMissingCountsKindsOfHeavyWorkLeftOut() {
    Exercise squat = lift("squat", "squat", 2, "quadriceps");
    Exercise lunge = lift("lunge", "lunge", 3, "quadriceps");
    Exercise hinge = lift("hinge", "hinge", 2, "hamstrings");
    Exercise push = lift("push", "push", 2, "chest");
    Exercise pull = lift("pull", "pull", 2, "upper-back");
    SessionBuilder all =
        training("quadriceps", "hamstrings", "chest", "upper-back").candidates(lunge, hinge, pull);
    silent(MainLiftMissing.class, all.superset(squat, hinge).superset(push, pull));
    costs(
        MainLiftMissing.class,
        1,
        training("quadriceps", "hamstrings").candidates(hinge).superset(squat, lunge));
    costs(
        MainLiftMissing.class,
        2,
        training("chest", "upper-back").candidates(push, pull).superset(squat, hinge));
    costs(MainLiftMissing.class, 1, training("quadriceps").candidates(squat).superset());
  }

  @Test
  void mainLiftMissingAsksForModerateIntensityThePatternAndATarget() {
    Exercise squat = lift("squat", "squat", 2, "quadriceps");
    Exercise lightSquat = lift("light-squat", "squat", 1, "quadriceps");
    Exercise extension = lift("extension", "knee-extension", 3, "quadriceps");
    Exercise bridge = lift("bridge", "bridge", 2, "gluteus-maximus");
    costs(
        MainLiftMissing.class,
        1,
        training("quadriceps").candidates(squat).superset(lightSquat, extension));
    costs(
        MainLiftMissing.class,
        1,
        training("hamstrings")
            .candidates(lift("hinge", "hinge", 3, "hamstrings"))
            .superset(bridge, squat));
    silent(MainLiftMissing.class, training("gluteus-maximus").superset(bridge, squat));
    Exercise lunge =
        exercise("lunge").withPattern("lunge").withSides(Sides.UNILATERAL).withIntensity(3).build();
    silent(MainLiftMissing.class, training("quadriceps").candidates(squat).bothSides(lunge));
  }

  @Test
  void mainLiftMissingAsksForNothingThatTheClientCannotDo() {
    Exercise extension = lift("extension", "knee-extension", 2, "quadriceps");
    SessionBuilder nothing = training("quadriceps").superset(extension);
    silent(MainLiftMissing.class, nothing);
    Exercise loaded = exercise("loaded").withPattern("squat").withNeed(Trade.DUMBBELL, 1).build();
    silent(MainLiftMissing.class, training("quadriceps").candidates(loaded).superset(extension));
    costs(
        MainLiftMissing.class,
        1,
        training("quadriceps")
            .asked(p -> p.owning(Problems.two(Trade.DUMBBELL)))
            .candidates(loaded)
            .superset(extension));
    Exercise skilled = exercise("skilled").withPattern("squat").withLevel(3).build();
    silent(MainLiftMissing.class, training("quadriceps").candidates(skilled).superset(extension));
    Exercise squat = lift("squat", "squat", 2, "quadriceps");
    silent(
        MainLiftMissing.class,
        training("quadriceps")
            .asked(p -> p.excluding("squat"))
            .candidates(squat)
            .superset(extension));
    Exercise deep = exercise("deep").withPattern("squat").withDemand(Joint.KNEE, 3).build();
    silent(
        MainLiftMissing.class,
        training("quadriceps")
            .asked(p -> p.limited("sore-knees"))
            .candidates(deep)
            .superset(extension));
    Exercise lunge = exercise("lunge").withPattern("lunge").withSides(Sides.UNILATERAL).build();
    silent(
        MainLiftMissing.class,
        training("quadriceps")
            .asked(p -> p.clock(clock(3, 1)))
            .candidates(lunge)
            .superset(extension));
    silent(MainLiftMissing.class, training("calves").candidates(squat).superset(extension));
  }

  private SessionBuilder owning(String... equipment) {
    Exercise dumbbell = exercise("dumbbell").withNeed(Trade.DUMBBELL, 1).build();
    return session()
        .asked(p -> p.owning(Arrays.stream(equipment).map(Problems::two).toArray(Owned[]::new)))
        .superset(dumbbell, quads);
  }

  @Test
  void equipmentUnusedCountsItemsLeftLying() {
    silent(EquipmentUnused.class, owning());
    silent(EquipmentUnused.class, owning(Trade.DUMBBELL));
    costs(EquipmentUnused.class, 1, owning(Trade.DUMBBELL, Trade.CHAIR));
    costs(EquipmentUnused.class, 2, owning(Trade.ANKLE_WEIGHTS, Trade.CHAIR));
    costs(
        EquipmentUnused.class,
        1,
        session().asked(p -> p.owning(Problems.two(Trade.CHAIR))).superset());
  }

  @Test
  void equipmentUnusedIsSatisfiedByComfort() {
    costs(EquipmentUnused.class, 1, owning(Trade.MAT));
    silent(
        EquipmentUnused.class,
        owning(Trade.MAT).superset(exercise("lying").withPosition(Position.SUPINE).build()));
    Exercise allowing = exercise("allowing").withAllowsWorn(Trade.ANKLE_WEIGHTS).build();
    costs(EquipmentUnused.class, 1, owning(Trade.ANKLE_WEIGHTS).superset(allowing));
  }

  @Test
  void includeMissingCountsWishesThatAreNotThere() {
    silent(IncludeMissing.class, session().superset(quads, hams));
    silent(IncludeMissing.class, session().asked(p -> p.including("quads")).superset(quads, hams));
    costs(
        IncludeMissing.class,
        1,
        session()
            .asked(p -> p.including("quads", "chest"))
            .candidates(chest)
            .superset(quads, hams));
    costs(
        IncludeMissing.class,
        2,
        session().asked(p -> p.including("quads", "chest")).candidates(quads, chest).superset());
    Exercise variant = exercise("quads-heavy").withVariantOf("quads").build();
    costs(
        IncludeMissing.class,
        1,
        session().asked(p -> p.including("quads")).candidates(quads).superset(variant, plain("x")));
  }
}

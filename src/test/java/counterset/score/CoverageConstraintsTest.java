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

  @Test
  void targetUncoveredCountsEasySetsHalfWhereBetterOnesCanBeDone() {
    Exercise easy = exercise("easy").withIntensity(1).build();
    Exercise easyToo = exercise("easy-too").withIntensity(1).build();
    costs(TargetUncovered.class, 1, wanting(1).candidates(quads).superset(easy, hams));
    silent(TargetUncovered.class, wanting(1).candidates(quads).superset(easy, easyToo));
    silent(TargetUncovered.class, wanting(1).superset(easy, hams));
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

  private SessionBuilder lifting(int supersets, int dumbbells, int chairs) {
    SessionBuilder session =
        session().asked(p -> p.owning(Problems.two(Trade.DUMBBELL), Problems.two(Trade.CHAIR)));
    for (int place = 0; place < 2 * supersets; place += 2) {
      session.superset(
          at(place, dumbbells, chairs, supersets), at(place + 1, dumbbells, chairs, supersets));
    }
    return session;
  }

  /** The first places have dumbbells, the last ones chairs. */
  private Exercise at(int place, int dumbbells, int chairs, int supersets) {
    if (place < dumbbells) {
      return exercise("dumbbell-" + place).withNeed(Trade.DUMBBELL, 1).build();
    }
    return place >= 2 * supersets - chairs
        ? exercise("chair-" + place).withNeed(Trade.CHAIR, 1).build()
        : plain("bare-" + place);
  }

  @Test
  void equipShareCountsPlacesShortOf55In100ThatLift() {
    silent(EquipShare.class, lifting(2, 2, 1));
    silent(EquipShare.class, lifting(2, 3, 1));
    costs(EquipShare.class, 1, lifting(2, 1, 1));
    costs(EquipShare.class, 3, lifting(2, 0, 4));
    silent(EquipShare.class, session().superset(quads, hams));
  }

  @Test
  void equipShareAsksForEachItemInOneOfFourPlaces() {
    silent(EquipShare.class, lifting(2, 3, 1));
    costs(EquipShare.class, 1, lifting(2, 4, 0));
    costs(EquipShare.class, 2, lifting(5, 8, 0));
    silent(EquipShare.class, lifting(5, 6, 2));
  }

  @Test
  void equipShareAsksForLessOfEachOfMany() {
    SessionBuilder many =
        session()
            .asked(
                p ->
                    p.owning(
                        Problems.two(Trade.DUMBBELL),
                        Problems.two(Trade.CHAIR),
                        Problems.two(Trade.ANKLE_WEIGHTS)));
    for (int i = 0; i < 2; i++) {
      many.superset(
          exercise("first-" + i).withNeed(Trade.DUMBBELL, 1).build(),
          exercise("second-" + i).withNeed(Trade.CHAIR, 1).build());
    }
    silent(EquipShare.class, many);
    many.superset(quads, exercise("lifted").withNeed(Trade.DUMBBELL, 1).build());
    costs(EquipShare.class, 1, many);
  }

  @Test
  void equipShareCountsBothSidesAndLeavesOutComfort() {
    Exercise side =
        exercise("side").withSides(Sides.UNILATERAL).withNeed(Trade.DUMBBELL, 1).build();
    SessionBuilder owning = session().asked(p -> p.owning(Problems.two(Trade.DUMBBELL)));
    silent(EquipShare.class, owning.bothSides(side).superset(quads, hams));
    SessionBuilder mat = session().asked(p -> p.owning(Problems.two(Trade.MAT)));
    for (int i = 0; i < 5; i++) {
      mat.superset(plain("first-" + i), plain("second-" + i));
    }
    silent(EquipShare.class, mat);
  }
}

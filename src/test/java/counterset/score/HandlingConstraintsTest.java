package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.SessionBuilder.clock;
import static counterset.fixture.SessionBuilder.session;
import static counterset.score.Check.costs;
import static counterset.score.Check.silent;

import counterset.fixture.SessionBuilder;
import counterset.fixture.Trade;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Load;
import counterset.model.Position;
import org.junit.jupiter.api.Test;

/**
 * Seconds of the small trade: dumbbell 3 on and 2 off, ankle weights 20 and 12, mat 5 and 3, chair
 * 5 and 4.
 */
class HandlingConstraintsTest {

  private final Exercise standing = plain("standing");
  private final Exercise standingToo = plain("standing-too");
  private final Exercise seated = exercise("seated").withPosition(Position.SEATED).build();
  private final Exercise wall =
      exercise("at-wall").withPosition(Position.WALL).withNeed(Trade.WALL, 1).build();
  private final Exercise prone = exercise("prone").withPosition(Position.PRONE).build();
  private final Exercise supine = exercise("supine").withPosition(Position.SUPINE).build();
  private final Exercise dumbbell =
      exercise("dumbbell").withNeed(Trade.DUMBBELL, 1, Load.HEAVY).build();
  private final Exercise lighter =
      exercise("lighter").withNeed(Trade.DUMBBELL, 1, Load.LIGHT).build();
  private final Exercise dumbbells =
      exercise("dumbbells").withNeed(Trade.DUMBBELL, 2, Load.HEAVY).build();
  private final Exercise worn = exercise("worn").withNeed(Trade.ANKLE_WEIGHTS, 1).build();
  private final Exercise allowing =
      exercise("allowing").withAllowsWorn(Trade.ANKLE_WEIGHTS).build();
  private final Exercise chair = exercise("chair").withNeed(Trade.CHAIR, 1).build();

  @Test
  void changeoverTooLongHasFiveSecondsOfWorkInsideASuperset() {
    silent(ChangeoverTooLong.class, session().superset(standing, dumbbell));
    silent(ChangeoverTooLong.class, session().superset(standing, seated));
    costs(ChangeoverTooLong.class, 1, session().superset(standing, prone));
    silent(ChangeoverTooLong.class, session().superset(standing, standingToo));
  }

  @Test
  void changeoverTooLongAddsTheSwitch() {
    Intervals two = new Intervals(10, 150, 45, 2, 30, 0, 2, 1);
    Exercise mat = exercise("mat").withNeed(Trade.MAT, 1).withPosition(Position.WALL).build();
    costs(ChangeoverTooLong.class, 3, session().asked(p -> p.clock(two)).superset(standing, mat));
    silent(ChangeoverTooLong.class, session().asked(p -> p.clock(two)).superset(standing, prone));
  }

  @Test
  void changeoverTooLongLeavesFiveSecondsOfARestToTheCountdown() {
    Exercise heavy =
        exercise("heavy").withNeed(Trade.ANKLE_WEIGHTS, 1).withNeed(Trade.CHAIR, 1).build();
    Exercise heavySeat =
        exercise("heavy-seat")
            .withNeed(Trade.ANKLE_WEIGHTS, 1)
            .withNeed(Trade.CHAIR, 1)
            .withPosition(Position.SEATED)
            .build();
    silent(ChangeoverTooLong.class, session().superset(standing, standingToo).superset(worn));
    silent(ChangeoverTooLong.class, session().superset(standing, standingToo).superset(heavy));
    costs(
        ChangeoverTooLong.class, 5, session().superset(standing, standingToo).superset(heavySeat));
    Intervals shorter = new Intervals(10, 150, 45, 0, 29, 0, 2, 1);
    costs(
        ChangeoverTooLong.class,
        1,
        session().asked(p -> p.clock(shorter)).superset(standing).superset(heavy));
  }

  @Test
  void equipmentChangeCountsItemsUpAndDown() {
    silent(
        EquipmentChange.class,
        session()
            .superset(dumbbell, exercise("x").withNeed(Trade.DUMBBELL, 1, Load.HEAVY).build()));
    costs(EquipmentChange.class, 1, session().superset(standing, dumbbell));
    costs(EquipmentChange.class, 1, session().superset(dumbbell, standing));
    silent(EquipmentChange.class, session().superset(standing, wall).superset(prone));
  }

  @Test
  void equipmentChangeIsFreeForWhatStandsReady() {
    Exercise mat = exercise("on-mat").withNeed(Trade.MAT, 1).build();
    silent(EquipmentChange.class, session().superset(standing, chair).superset(mat));
    costs(EquipmentChange.class, 1, session().superset(dumbbell, chair));
  }

  @Test
  void equipmentChangeTakesOneForAnotherForOneChange() {
    costs(EquipmentChange.class, 1, session().superset(dumbbell, dumbbells));
    costs(EquipmentChange.class, 1, session().superset(dumbbell, lighter));
    costs(EquipmentChange.class, 2, session().superset(standing, worn).superset(dumbbell));
  }

  @Test
  void equipmentChangeLeavesWornItemsOnWhileTheyAreAllowed() {
    silent(EquipmentChange.class, session().superset(worn, allowing));
    costs(EquipmentChange.class, 1, session().superset(worn, allowing).superset(standing));
    costs(EquipmentChange.class, 1, session().superset(allowing, worn));
    costs(EquipmentChange.class, 2, session().superset(worn, standing).superset(worn));
  }

  @Test
  void equipmentChangeGoesRoundByRound() {
    costs(
        EquipmentChange.class,
        3,
        session().asked(p -> p.clock(clock(2, 2))).superset(dumbbell, standing));
    costs(
        EquipmentChange.class,
        5,
        session().asked(p -> p.clock(clock(2, 3))).superset(dumbbell, standing));
  }

  @Test
  void changeoverSecondsCosts18TenthsASecondBeyondThreeInside() {
    silent(ChangeoverSeconds.class, session().superset(standing, standingToo));
    silent(ChangeoverSeconds.class, session().superset(prone, supine));
    costs(ChangeoverSeconds.class, 4, session().superset(standing, wall));
    costs(ChangeoverSeconds.class, 4, session().superset(dumbbell, lighter));
    costs(ChangeoverSeconds.class, 5, session().superset(supine, seated));
  }

  /** Of a rest of 30 seconds 25 are for a changeover, of which 12.5 cost nothing. */
  @Test
  void changeoverSecondsCosts3TenthsASecondBeyondHalfOfARest() {
    silent(ChangeoverSeconds.class, session().superset(worn).superset(standing));
    costs(ChangeoverSeconds.class, 2, session().superset(standing).superset(worn));
    costs(ChangeoverSeconds.class, 2, session().superset(worn).superset(prone));
    silent(ChangeoverSeconds.class, session().superset(worn));
  }

  @Test
  void floorTripIsFreeTheFirstTime() {
    silent(FloorTrip.class, session().superset(standing, seated));
    silent(FloorTrip.class, session().superset(standing, prone).superset(supine));
    silent(FloorTrip.class, session().superset(prone, standing).superset(supine));
    silent(FloorTrip.class, session().superset(standing, prone).superset(standingToo));
    costs(FloorTrip.class, 1, session().superset(standing, prone).superset(seated, supine));
    costs(
        FloorTrip.class,
        2,
        session().superset(standing, prone).superset(seated, supine).superset(wall, prone));
  }

  @Test
  void floorTripGoesRoundByRoundAndOverHoles() {
    SessionBuilder twice = session().asked(p -> p.clock(clock(2, 2)));
    costs(FloorTrip.class, 1, twice.superset(standing, prone));
    SessionBuilder holes = session().superset(standing, prone).superset().superset(null, wall);
    costs(FloorTrip.class, 1, holes.superset(supine));
  }
}

package counterset.score;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.fixture.SessionBuilder.clock;
import static counterset.fixture.SessionBuilder.session;
import static counterset.score.Check.costs;
import static counterset.score.Check.silent;

import counterset.fixture.ExerciseBuilder;
import counterset.fixture.Problems;
import counterset.fixture.SessionBuilder;
import counterset.fixture.Trade;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Position;
import counterset.model.Sides;
import counterset.model.Target;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A class with followers who have sore knees, and some who stay off the floor. */
class TrackConstraintsTest {

  private static final Set<String> KNEES = Set.of("sore-knees");
  private static final Set<String> NO_FLOOR = Set.of("no-floor");

  private final Exercise squat = deep("squat").build();
  private final Exercise lunge = deep("lunge").build();
  private final Exercise split = deep("split").withSides(Sides.UNILATERAL).build();
  private final Exercise hinge = plain("hinge");
  private final Exercise bridge = plain("bridge");
  private final Exercise kick = exercise("kick").withSides(Sides.UNILATERAL).build();
  private final Exercise plank = exercise("plank").withPosition(Position.PRONE).build();

  private static ExerciseBuilder deep(String id) {
    return exercise(id).withDemand(Joint.KNEE, 2);
  }

  /** Two supersets for followers with sore knees. */
  private static SessionBuilder knees() {
    return session().asked(problems -> problems.tracks(KNEES));
  }

  @Test
  void modificationMissingCountsExercisesThatDoNotSuitATrack() {
    silent(ModificationMissing.class, session().superset(squat, hinge));
    silent(ModificationMissing.class, knees().superset(hinge, bridge));
    costs(ModificationMissing.class, 1, knees().superset(squat, hinge));
    costs(ModificationMissing.class, 2, knees().superset(squat, hinge).superset(bridge, lunge));
    silent(ModificationMissing.class, knees().superset(squat, hinge).instead(0, "1A", bridge));
    costs(ModificationMissing.class, 1, knees().superset(squat, hinge).instead(0, "1B", bridge));
    silent(ModificationMissing.class, knees().superset());
  }

  @Test
  void modificationMissingLooksAtEachTrackByItself() {
    SessionBuilder two = session().asked(p -> p.tracks(KNEES, NO_FLOOR)).superset(squat, plank);
    costs(ModificationMissing.class, 2, two);
    costs(ModificationMissing.class, 1, two.instead(0, "1A", hinge));
    costs(ModificationMissing.class, 1, two.instead(0, "1B", bridge));
    silent(ModificationMissing.class, two.instead(1, "1B", hinge));
  }

  @Test
  void modificationMissingHoldsATrackToAllItsLimitations() {
    SessionBuilder both =
        session().asked(p -> p.tracks(Set.of("sore-knees", "no-floor"))).superset(squat, hinge);
    costs(ModificationMissing.class, 1, both.instead(0, "1A", plank));
  }

  @Test
  void modificationMissingTakesNothingThatTheSessionForbids() {
    Exercise hard = exercise("hard").withLevel(3).build();
    Exercise loaded = exercise("loaded").withNeed(Trade.DUMBBELL, 1).build();
    costs(ModificationMissing.class, 1, knees().superset(squat, hinge).instead(0, "1A", lunge));
    costs(ModificationMissing.class, 1, knees().superset(squat, hinge).instead(0, "1A", hard));
    costs(ModificationMissing.class, 1, knees().superset(squat, hinge).instead(0, "1A", loaded));
    silent(
        ModificationMissing.class,
        knees()
            .asked(p -> p.owning(Problems.two(Trade.DUMBBELL)))
            .superset(squat, hinge)
            .instead(0, "1A", loaded));
    costs(
        ModificationMissing.class,
        1,
        knees().asked(p -> p.excluding("bridge")).superset(squat, hinge).instead(0, "1A", bridge));
    costs(
        ModificationMissing.class,
        1,
        knees().asked(p -> p.limited("no-floor")).superset(squat, hinge).instead(0, "1A", plank));
  }

  @Test
  void modificationMissingFitsTheSides() {
    costs(ModificationMissing.class, 1, knees().superset(squat, hinge).instead(0, "1A", kick));
    costs(ModificationMissing.class, 1, knees().bothSides(split));
    silent(ModificationMissing.class, knees().bothSides(split).instead(0, "1A", kick));
    silent(ModificationMissing.class, knees().bothSides(split).instead(0, "1A", hinge));
    costs(ModificationMissing.class, 1, knees().bothSides(split).instead(0, "1B", kick));
  }

  @Test
  void trackRepeatedCountsPairsWithAModification() {
    silent(TrackRepeated.class, knees().superset(squat, hinge).instead(0, "1A", bridge));
    costs(TrackRepeated.class, 1, knees().superset(squat, hinge).instead(0, "1A", hinge));
    costs(
        TrackRepeated.class,
        1,
        knees().superset(squat, lunge).instead(0, "1A", hinge).instead(0, "1B", hinge));
    costs(
        TrackRepeated.class,
        3,
        knees()
            .superset(squat, lunge)
            .superset(hinge)
            .instead(0, "1A", hinge)
            .instead(0, "1B", hinge));
    silent(TrackRepeated.class, knees().superset(hinge, hinge));
    silent(TrackRepeated.class, knees().bothSides(split).instead(0, "1A", hinge));
  }

  @Test
  void trackRepeatedTakesAVariantForTheSame() {
    Exercise variant = exercise("hinge-slow").withVariantOf("hinge").build();
    costs(TrackRepeated.class, 1, knees().superset(squat, hinge).instead(0, "1A", variant));
    costs(
        TrackRepeated.class, 1, knees().bothSides(split).superset(hinge).instead(0, "1A", variant));
  }

  @Test
  void trackRepeatedLetsTwoTracksDoTheSame() {
    silent(
        TrackRepeated.class,
        session()
            .asked(p -> p.tracks(KNEES, Set.of("sore-knees", "no-floor")))
            .superset(squat, bridge)
            .instead(0, "1A", hinge)
            .instead(1, "1A", hinge));
  }

  @Test
  void trackRepeatedIgnoresWhatIsNotNeeded() {
    silent(TrackRepeated.class, knees().superset(hinge, bridge).instead(0, "1A", bridge));
  }

  @Test
  void modificationAwkwardCountsFetchingPositionAndMuscles() {
    Exercise loaded = exercise("loaded").withNeed(Trade.DUMBBELL, 1).build();
    Exercise seated = exercise("seated").withPosition(Position.SEATED).build();
    Exercise curl = exercise("curl").withPrimary("biceps").build();
    Exercise all =
        exercise("all")
            .withPrimary("chest")
            .withPosition(Position.SEATED)
            .withNeed(Trade.DUMBBELL, 1)
            .withNeed(Trade.CHAIR, 1)
            .build();
    silent(ModificationAwkward.class, awkward(squat, hinge));
    costs(ModificationAwkward.class, 10, awkward(squat, loaded));
    costs(ModificationAwkward.class, 4, awkward(squat, seated));
    costs(ModificationAwkward.class, 15, awkward(squat, curl));
    costs(ModificationAwkward.class, 39, awkward(squat, all));
    silent(
        ModificationAwkward.class,
        awkward(deep("goblet").withNeed(Trade.DUMBBELL, 1).build(), loaded));
    costs(
        ModificationAwkward.class,
        10,
        awkward(deep("goblet").withNeed(Trade.DUMBBELL, 2).build(), loaded));
    costs(
        ModificationAwkward.class,
        4,
        awkward(deep("goblet").withNeed(Trade.DUMBBELL, 1).build(), hinge));
    silent(ModificationAwkward.class, awkward(hinge, all));
  }

  private static SessionBuilder awkward(Exercise main, Exercise instead) {
    return knees()
        .asked(p -> p.owning(Problems.two(Trade.DUMBBELL), Problems.two(Trade.CHAIR)))
        .superset(main)
        .instead(0, "1A", instead);
  }

  @Test
  void modificationAwkwardCountsBothSidesOnce() {
    Exercise seated =
        exercise("seated").withPosition(Position.SEATED).withSides(Sides.UNILATERAL).build();
    costs(ModificationAwkward.class, 4, knees().bothSides(split).instead(0, "1A", seated));
  }

  @Test
  void targetUncoveredCountsOnATrackWhatItDoes() {
    Exercise curl = exercise("curl").withPrimary("biceps").build();
    Target[] twice = {new Target("quadriceps", 1, 2)};
    silent(
        TargetUncovered.class,
        knees().asked(p -> p.targets(twice)).superset(squat, hinge).instead(0, "1A", bridge));
    costs(
        TargetUncovered.class,
        1,
        knees().asked(p -> p.targets(twice)).superset(squat, hinge).instead(0, "1A", curl));
    costs(TargetUncovered.class, 1, knees().asked(p -> p.targets(twice)).superset(squat, hinge));
    costs(
        TargetUncovered.class,
        4,
        knees().asked(p -> p.targets(twice)).superset().candidates(hinge));
  }

  @Test
  void targetUncoveredLeavesOutWhatATrackCannotTrain() {
    Exercise curl = exercise("curl").withPrimary("biceps").build();
    Target[] two = {new Target("quadriceps", 1, 1), new Target("biceps", 1, 1)};
    silent(TargetUncovered.class, knees().asked(p -> p.targets(two)).superset(squat, curl));
    costs(
        TargetUncovered.class,
        1,
        knees().asked(p -> p.targets(two)).superset(squat, curl).candidates(hinge));
  }

  @Test
  void changeoverTooLongGoesAlongEachTrack() {
    Exercise prone = exercise("prone").withPosition(Position.PRONE).build();
    Exercise deepProne = deep("deep-prone").withPosition(Position.PRONE).build();
    silent(ChangeoverTooLong.class, knees().superset(squat, hinge).instead(0, "1A", bridge));
    costs(ChangeoverTooLong.class, 1, knees().superset(squat, hinge).instead(0, "1A", prone));
    costs(ChangeoverTooLong.class, 1, knees().superset(deepProne, hinge).instead(0, "1A", bridge));
    costs(ChangeoverTooLong.class, 2, knees().superset(plank, hinge));
    costs(
        ChangeoverTooLong.class,
        3,
        knees().asked(p -> p.clock(clock(2, 3))).superset(squat, hinge).instead(0, "1A", prone));
  }
}

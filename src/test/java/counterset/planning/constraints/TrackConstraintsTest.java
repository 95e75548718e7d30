package counterset.planning.constraints;

import static counterset.fixture.ExerciseBuilder.exercise;
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
    silent(MODIFICATION_MISSING, session().superset(squat, hinge));
    silent(MODIFICATION_MISSING, knees().superset(hinge, bridge));
    costs(MODIFICATION_MISSING, 1, knees().superset(squat, hinge));
    costs(MODIFICATION_MISSING, 2, knees().superset(squat, hinge).superset(bridge, lunge));
    silent(MODIFICATION_MISSING, knees().superset(squat, hinge).instead(0, "1A", bridge));
    costs(MODIFICATION_MISSING, 1, knees().superset(squat, hinge).instead(0, "1B", bridge));
    silent(MODIFICATION_MISSING, knees().superset());
  }

  @Test
  void modificationMissingLooksAtEachTrackByItself() {
    SessionBuilder two = session().asked(p -> p.tracks(KNEES, NO_FLOOR)).superset(squat, plank);
    costs(MODIFICATION_MISSING, 2, two);
    costs(MODIFICATION_MISSING, 1, two.instead(0, "1A", hinge));
    costs(MODIFICATION_MISSING, 1, two.instead(0, "1B", bridge));
    silent(MODIFICATION_MISSING, two.instead(1, "1B", hinge));
  }

  @Test
  void modificationMissingHoldsATrackToAllItsLimitations() {
    SessionBuilder both =
        session().asked(p -> p.tracks(Set.of("sore-knees", "no-floor"))).superset(squat, hinge);
    costs(MODIFICATION_MISSING, 1, both.instead(0, "1A", plank));
  }

  @Test
  void modificationMissingTakesNothingThatTheSessionForbids() {
    Exercise hard = exercise("hard").withLevel(3).build();
    Exercise loaded = exercise("loaded").withNeed(Trade.DUMBBELL, 1).build();
    costs(MODIFICATION_MISSING, 1, knees().superset(squat, hinge).instead(0, "1A", lunge));
    costs(MODIFICATION_MISSING, 1, knees().superset(squat, hinge).instead(0, "1A", hard));
    costs(MODIFICATION_MISSING, 1, knees().superset(squat, hinge).instead(0, "1A", loaded));
    silent(
        MODIFICATION_MISSING,
        knees()
            .asked(p -> p.owning(Problems.two(Trade.DUMBBELL)))
            .superset(squat, hinge)
            .instead(0, "1A", loaded));
    costs(
        MODIFICATION_MISSING,
        1,
        knees().asked(p -> p.excluding("bridge")).superset(squat, hinge).instead(0, "1A", bridge));
    costs(
        MODIFICATION_MISSING,
        1,
        knees().asked(p -> p.limited("no-floor")).superset(squat, hinge).instead(0, "1A", plank));
  }

  @Test
  void modificationMissingFitsTheSides() {
    costs(MODIFICATION_MISSING, 1, knees().superset(squat, hinge).instead(0, "1A", kick));
    costs(MODIFICATION_MISSING, 1, knees().bothSides(split));
    silent(MODIFICATION_MISSING, knees().bothSides(split).instead(0, "1A", kick));
    silent(MODIFICATION_MISSING, knees().bothSides(split).instead(0, "1A", hinge));
    costs(MODIFICATION_MISSING, 1, knees().bothSides(split).instead(0, "1B", kick));
  }

  @Test
  void trackRepeatedCountsPairsWithAModification() {
    silent(TRACK_REPEATED, knees().superset(squat, hinge).instead(0, "1A", bridge));
    costs(TRACK_REPEATED, 1, knees().superset(squat, hinge).instead(0, "1A", hinge));
    costs(
        TRACK_REPEATED,
        1,
        knees().superset(squat, lunge).instead(0, "1A", hinge).instead(0, "1B", hinge));
    costs(
        TRACK_REPEATED,
        3,
        knees()
            .superset(squat, lunge)
            .superset(hinge)
            .instead(0, "1A", hinge)
            .instead(0, "1B", hinge));
    silent(TRACK_REPEATED, knees().superset(hinge, hinge));
    silent(TRACK_REPEATED, knees().bothSides(split).instead(0, "1A", hinge));
  }

  @Test
  void trackRepeatedTakesAVariantForTheSame() {
    Exercise variant = exercise("hinge-slow").withVariantOf("hinge").build();
    costs(TRACK_REPEATED, 1, knees().superset(squat, hinge).instead(0, "1A", variant));
    costs(TRACK_REPEATED, 1, knees().bothSides(split).superset(hinge).instead(0, "1A", variant));
  }

  @Test
  void trackRepeatedLetsTwoTracksDoTheSame() {
    silent(
        TRACK_REPEATED,
        session()
            .asked(p -> p.tracks(KNEES, Set.of("sore-knees", "no-floor")))
            .superset(squat, bridge)
            .instead(0, "1A", hinge)
            .instead(1, "1A", hinge));
  }

  @Test
  void trackRepeatedIgnoresWhatIsNotNeeded() {
    silent(TRACK_REPEATED, knees().superset(hinge, bridge).instead(0, "1A", bridge));
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
    silent(MODIFICATION_AWKWARD, awkward(squat, hinge));
    costs(MODIFICATION_AWKWARD, 10, awkward(squat, loaded));
    costs(MODIFICATION_AWKWARD, 4, awkward(squat, seated));
    costs(MODIFICATION_AWKWARD, 15, awkward(squat, curl));
    costs(MODIFICATION_AWKWARD, 39, awkward(squat, all));
    silent(
        MODIFICATION_AWKWARD, awkward(deep("goblet").withNeed(Trade.DUMBBELL, 1).build(), loaded));
    costs(
        MODIFICATION_AWKWARD,
        10,
        awkward(deep("goblet").withNeed(Trade.DUMBBELL, 2).build(), loaded));
    costs(
        MODIFICATION_AWKWARD,
        4,
        awkward(deep("goblet").withNeed(Trade.DUMBBELL, 1).build(), hinge));
    silent(MODIFICATION_AWKWARD, awkward(hinge, all));
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
    costs(MODIFICATION_AWKWARD, 4, knees().bothSides(split).instead(0, "1A", seated));
  }

  @Test
  void targetUncoveredCountsOnATrackWhatItDoes() {
    Exercise curl = exercise("curl").withPrimary("biceps").build();
    Target[] twice = {new Target("quadriceps", 1, 2)};
    silent(
        TARGET_UNCOVERED,
        knees().asked(p -> p.targets(twice)).superset(squat, hinge).instead(0, "1A", bridge));
    costs(
        TARGET_UNCOVERED,
        1,
        knees().asked(p -> p.targets(twice)).superset(squat, hinge).instead(0, "1A", curl));
    costs(TARGET_UNCOVERED, 1, knees().asked(p -> p.targets(twice)).superset(squat, hinge));
    costs(TARGET_UNCOVERED, 4, knees().asked(p -> p.targets(twice)).superset().candidates(hinge));
  }

  @Test
  void targetUncoveredLeavesOutWhatATrackCannotTrain() {
    Exercise curl = exercise("curl").withPrimary("biceps").build();
    Target[] two = {new Target("quadriceps", 1, 1), new Target("biceps", 1, 1)};
    silent(TARGET_UNCOVERED, knees().asked(p -> p.targets(two)).superset(squat, curl));
    costs(
        TARGET_UNCOVERED,
        1,
        knees().asked(p -> p.targets(two)).superset(squat, curl).candidates(hinge));
  }

  @Test
  void changeoverTooLongGoesAlongEachTrack() {
    Exercise prone = exercise("prone").withPosition(Position.PRONE).build();
    Exercise deepProne = deep("deep-prone").withPosition(Position.PRONE).build();
    silent(CHANGEOVER_TOO_LONG, knees().superset(squat, hinge).instead(0, "1A", bridge));
    costs(CHANGEOVER_TOO_LONG, 1, knees().superset(squat, hinge).instead(0, "1A", prone));
    costs(CHANGEOVER_TOO_LONG, 1, knees().superset(deepProne, hinge).instead(0, "1A", bridge));
    costs(CHANGEOVER_TOO_LONG, 2, knees().superset(plank, hinge));
    costs(
        CHANGEOVER_TOO_LONG,
        3,
        knees().asked(p -> p.clock(clock(2, 3))).superset(squat, hinge).instead(0, "1A", prone));
  }
}

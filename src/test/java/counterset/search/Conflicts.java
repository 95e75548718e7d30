package counterset.search;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.search.Conflict.target;

import counterset.fixture.Trade;
import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Keep;
import counterset.model.Position;
import java.util.List;
import java.util.stream.Stream;

/**
 * Conflicts by construction. With the express clock 5 minutes hold one superset, 7 hold two and 9
 * three.
 */
final class Conflicts {

  static final String CARE = ", if the client's body really allows it";
  static final List<Exercise> PLENTY =
      Stream.of("a", "b", "c", "d", "e", "f").map(id -> plain("plain-" + id)).toList();
  static final Exercise SQUAT =
      exercise("squat").withDemand(Joint.KNEE, 2).withPrimary("quadriceps").build();

  private Conflicts() {}

  static List<Conflict> all() {
    return Stream.concat(broken().stream(), UnmetConflicts.all().stream()).toList();
  }

  static Exercise onTheFloor(String id) {
    return exercise(id).withPrimary("hip-adductors").withPosition(Position.SUPINE).build();
  }

  private static Exercise onTheChair(String id) {
    return exercise(id)
        .withPrimary("hip-adductors")
        .withPosition(Position.SUPINE)
        .withNeed(Trade.CHAIR, 1)
        .build();
  }

  private static Keep keep(int superset, int position, String exercise) {
    return new Keep(new At(superset, position), exercise);
  }

  static List<Exercise> plenty(Exercise... more) {
    return Stream.concat(PLENTY.stream(), Stream.of(more)).toList();
  }

  /** No session can be handed out. */
  private static List<Conflict> broken() {
    return List.of(
        Conflict.of(
            "cap below one superset",
            PLENTY,
            asked -> asked.minutes(4),
            "The clock has room for no superset: the shortest session takes 250 s, and the cap is"
                + " 240 s.",
            "5 min",
            "a warm-up of 140 s"),
        Conflict.of(
            "kept against a limitation",
            plenty(SQUAT),
            asked -> asked.minutes(7).limited("sore-knees").keeping(keep(2, 0, "squat")),
            "2A is kept: squat, which is ruled out by sore-knees.",
            "let go of what is kept at 2A (squat)",
            "drop the limitation sore knees" + CARE),
        Conflict.of(
            "kept without its equipment",
            plenty(exercise("press").withNeed(Trade.DUMBBELL, 2).build()),
            asked -> asked.minutes(7).keeping(keep(1, 0, "press")),
            "1A is kept: press, which is ruled out by no equipment.",
            "have two dumbbells",
            "let go of what is kept at 1A (press)"),
        Conflict.of(
            "kept beyond the clock",
            plenty(SQUAT),
            asked -> asked.minutes(7).keeping(keep(3, 0, "squat")),
            "3A is kept: squat, and the clock has room for 2 supersets only.",
            "9 min",
            "a warm-up of 80 s",
            "let go of what is kept at 3A (squat)"),
        Conflict.of(
            "kept without time to change over",
            plenty(SQUAT, exercise("bridge").withPosition(Position.SUPINE).build()),
            asked -> asked.minutes(7).keeping(keep(1, 0, "squat"), keep(1, 1, "bridge")),
            "What is kept cannot be done as it stands: squat at 1A and bridge at 1B.",
            "5 s to switch",
            "let go of what is kept at 1A (squat)",
            "let go of what is kept at 1B (bridge)"),
        Conflict.of(
            "nothing without two changes",
            List.of(onTheChair("ball-squeeze"), onTheChair("towel-squeeze")),
            asked -> asked.minutes(5).targets(target("hip-adductors", 1)).limited("no-floor"),
            "No exercise for hip-adductors is possible with no-floor, nor with no equipment.",
            "add a chair, and allow the floor"));
  }
}

package counterset.solve;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.fixture.ExerciseBuilder.plain;
import static counterset.solve.Conflict.target;

import counterset.fixture.Problems;
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

  private static final String CARE = ", if the client's body really allows it";
  private static final List<Exercise> PLENTY =
      Stream.of("a", "b", "c", "d", "e", "f").map(id -> plain("plain-" + id)).toList();
  private static final Exercise SQUAT =
      exercise("squat").withDemand(Joint.KNEE, 2).withPrimary("quadriceps").build();

  private Conflicts() {}

  static List<Conflict> all() {
    return Stream.concat(broken().stream(), unmet().stream()).toList();
  }

  private static Exercise onTheFloor(String id) {
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

  private static List<Exercise> plenty(Exercise... more) {
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

  /** There is a session, and a wish is unmet. */
  private static List<Conflict> unmet() {
    return List.of(
        Conflict.of(
            "target on the floor",
            plenty(onTheFloor("squeeze"), onTheFloor("long-squeeze")),
            asked ->
                asked
                    .minutes(7)
                    .targets(target("quadriceps", 1), target("hip-adductors", 1))
                    .limited("no-floor"),
            "No exercise for hip-adductors is possible with no-floor.",
            "drop hip-adductors",
            "allow the floor"),
        Conflict.of(
            "target above the level",
            plenty(exercise("hop").withPrimary("calves").withLevel(3).build()),
            asked -> asked.minutes(7).targets(target("quadriceps", 1), target("calves", 1)),
            "No exercise for calves is possible with level 2.",
            "level 3",
            "drop calves"),
        Conflict.of(
            "target excluded",
            plenty(exercise("curl").withPrimary("biceps").build()),
            asked ->
                asked
                    .minutes(7)
                    .targets(target("quadriceps", 1), target("biceps", 1))
                    .excluding("curl"),
            "No exercise for biceps is possible with curl excluded.",
            "stop excluding curl",
            "drop biceps"),
        Conflict.of(
            "more targets than places",
            plenty(
                exercise("curl").withPrimary("biceps").build(),
                exercise("raise").withPrimary("calves").build()),
            asked ->
                asked
                    .minutes(5)
                    .targets(target("quadriceps", 1), target("biceps", 1), target("calves", 1)),
            "3 targets want 3 sets, and 1 superset holds 2 exercises: no room was found for",
            "7 min",
            "a warm-up of 80 s",
            "drop quadriceps",
            "drop biceps",
            "drop calves"),
        Conflict.of(
            "more sets than exercises",
            plenty(
                exercise("raise").withPrimary("calves").build(),
                exercise("tiptoe").withPrimary("calves").build()),
            asked -> asked.minutes(9).targets(target("quadriceps", 1), target("calves", 3)),
            "Calves should get 3 sets, and only 2 different exercises are possible.",
            "ask for fewer sets of calves (2 instead of 3)"),
        Conflict.of(
            "equipment of no use",
            PLENTY,
            asked -> asked.minutes(7).owning(Problems.two(Trade.ANKLE_WEIGHTS)),
            "No exercise of the catalogue trains these targets with ankle-weights.",
            "leave out the ankle-weights"),
        Conflict.of(
            "asked for against a limitation",
            plenty(SQUAT),
            asked -> asked.minutes(7).limited("sore-knees").including("squat"),
            "Squat is asked for, and is ruled out by sore-knees.",
            "do without squat",
            "drop the limitation sore knees" + CARE),
        Conflict.of(
            "more places than exercises",
            PLENTY.subList(0, 3),
            asked -> asked.minutes(7),
            "The clock has room for 4 exercises, and 3 different exercises can be done with all"
                + " that is asked.",
            "only 5 min"));
  }
}

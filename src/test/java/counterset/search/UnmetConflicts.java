package counterset.search;

import static counterset.fixture.ExerciseBuilder.exercise;
import static counterset.search.Conflict.target;
import static counterset.search.Conflicts.CARE;
import static counterset.search.Conflicts.PLENTY;
import static counterset.search.Conflicts.SQUAT;
import static counterset.search.Conflicts.onTheFloor;
import static counterset.search.Conflicts.plenty;

import counterset.fixture.Problems;
import counterset.fixture.Trade;
import java.util.List;

/** Conflicts with which there is a session, and a wish is unmet. */
final class UnmetConflicts {

  private UnmetConflicts() {}

  static List<Conflict> all() {
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

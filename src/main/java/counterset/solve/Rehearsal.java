package counterset.solve;

import counterset.model.Aspect;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Met;
import counterset.model.Muscle;
import counterset.model.Pairing;
import counterset.model.Part;
import counterset.model.Position;
import counterset.model.Problem;
import counterset.model.Region;
import counterset.model.Sides;
import counterset.model.Target;
import counterset.planning.SessionFacts;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A tiny problem that brings the solver's classes into memory. Run it in the background while
 * something else is being read: most of the time of a short plan is otherwise spent on loading
 * classes.
 */
public final class Rehearsal {

  private static final int MOVES = 2_000;

  private Rehearsal() {}

  /** Solves the tiny problem and forgets the result. */
  public static void run() {
    List<Exercise> exercises =
        List.of(exercise("one", Sides.BILATERAL), exercise("two", Sides.UNILATERAL));
    Catalogue catalogue =
        Catalogue.of(
            List.of(
                new Muscle(
                    "muscle", "Muscle", Region.CORE, Aspect.FRONT, Set.of(), true, List.of())),
            List.of(),
            List.of(),
            exercises);
    Problem problem =
        new Problem(
            "",
            6,
            Intervals.EXPRESS,
            List.of(new Target("muscle", 1, 1)),
            List.of(),
            Set.of(),
            List.of(),
            1,
            Pairing.OPPOSING,
            Set.of(),
            Set.of(),
            List.of(),
            Set.of(),
            Set.of(),
            List.of(),
            Optional.empty(),
            Map.of(),
            1);
    new Search(new SessionFacts(problem, catalogue, exercises, 2), Map.of())
        .best(1, SearchConfig.moves(MOVES));
  }

  private static Exercise exercise(String id, Sides sides) {
    return new Exercise(
        id,
        id,
        List.of(),
        Part.MAIN,
        "squat",
        id,
        Optional.empty(),
        false,
        1,
        1,
        Set.of("muscle"),
        Set.of(),
        sides,
        Position.STANDING,
        List.of(),
        Set.of(),
        Map.of(),
        "",
        Set.of(),
        new Met("02054", 2024, 3.5),
        OptionalInt.empty(),
        "",
        List.of(),
        List.of());
  }
}

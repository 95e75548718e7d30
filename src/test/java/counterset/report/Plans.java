package counterset.report;

import counterset.fixture.FixedCatalogue;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Load;
import counterset.model.Owned;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.Superset;
import counterset.model.Target;
import counterset.search.SessionPlanner;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A few sessions written by hand over a fixed catalogue, scored: what all formats are tested with.
 */
public final class Plans {

  public static final Catalogue CATALOGUE = FixedCatalogue.CATALOGUE;

  private static final SolverNote SCORED = new SolverNote(1, "none", "test", 0, true);

  private Plans() {}

  /** All of them by name. */
  public static Map<String, Plan> all() {
    Map<String, Plan> plans = new LinkedHashMap<>();
    plans.put("legs", legs());
    plans.put("upper-rounds", upperRounds());
    plans.put("broken", broken());
    plans.put("class", ClassPlans.good());
    return plans;
  }

  /** Feasible: two masses of dumbbells, worn equipment, a mat, down to the floor once. */
  public static Plan legs() {
    Problem problem =
        problem(
            "Lunch-break legs",
            20,
            Intervals.EXPRESS,
            Set.of(),
            List.of(owned("dumbbell", 2, 6.0, 10.0), owned("ankle-weights", 1), owned("mat", 1)),
            "quadriceps",
            "hamstrings",
            "gluteus-maximus",
            "hip-abductors",
            "hip-adductors",
            "calves");
    return score(
        problem,
        SCORED,
        moves(
            "warm-march", "warm-heel-peel", "warm-side-step", "warm-heel-curl", "warm-mini-squat"),
        List.of(),
        "goblet-squat dumbbell-romanian-deadlift",
        "suitcase-deadlift suitcase-deadlift",
        "dumbbell-sumo-deadlift goblet-partial-squat",
        "dumbbell-partial-sumo-squat dumbbell-wide-stance-calf-raise",
        "ankle-weight-leg-curl ankle-weight-front-leg-raise",
        "ankle-weight-cross-over-lift ankle-weight-cross-over-lift",
        "ankle-weight-side-lying-leg-raise ankle-weight-side-lying-leg-raise",
        "ankle-weight-bridge-march ankle-weight-prone-leg-curl");
  }

  /** Two rounds, seconds to switch, a cool-down, dumbbells of one mass. */
  public static Plan upperRounds() {
    Intervals clock = new Intervals(10, 60, 40, 10, 30, 80, 2, 2);
    Problem problem =
        problem(
            "Push, pull and brace",
            20,
            clock,
            Set.of("no-jumping"),
            List.of(owned("dumbbell", 2, 8.0), owned("chair", 1), owned("mat", 1)),
            "chest",
            "upper-back",
            "shoulders",
            "biceps",
            "triceps",
            "abdominals");
    return score(
        problem,
        SCORED,
        moves("warm-march", "warm-air-row"),
        moves("all-fours-thread", "floor-hands-behind-stretch"),
        "underhand-bent-over-row rotating-press",
        "forearm-supported-row forearm-supported-row",
        "triceps-kickback three-part-curl",
        "floor-press bicycle-crunch");
  }

  /** Breaks rules and misses wishes; the search was interrupted. */
  public static Plan broken() {
    Problem problem =
        problem(
            "Too much",
            8,
            new Intervals(10, 60, 45, 0, 30, 0, 2, 1),
            Set.of("sore-knees"),
            List.of(owned("dumbbell", 1), owned("loop-band", 1)),
            "quadriceps",
            "hamstrings",
            "calves");
    return score(
        problem,
        new SolverNote(7, "quick", "test", 0, false),
        moves("warm-march"),
        List.of(),
        "goblet-squat ankle-weight-side-lying-leg-raise",
        "goblet-squat suitcase-deadlift",
        "",
        "rear-foot-raised-split-squat rear-foot-raised-split-squat");
  }

  /**
   * Scores a session.
   *
   * @param supersets ids of exercises by position, apart by spaces
   */
  public static Plan score(
      Problem problem,
      SolverNote note,
      List<Exercise> warmUp,
      List<Exercise> coolDown,
      String... supersets) {
    List<Superset> list = new ArrayList<>();
    for (String ids : supersets) {
      list.add(new Superset(list.size() + 1, ids.isEmpty() ? List.of() : moves(ids.split(" "))));
    }
    return new SessionPlanner(CATALOGUE, "test")
        .score(problem, new Session(warmUp, list, coolDown), note);
  }

  static List<Exercise> moves(String... ids) {
    return Arrays.stream(ids).map(Plans::exercise).toList();
  }

  private static Exercise exercise(String id) {
    return Optional.ofNullable(CATALOGUE.exercises().get(id))
        .orElseThrow(() -> new AssertionError("No exercise " + id));
  }

  public static Owned owned(String id, int count, Double... kg) {
    return new Owned(id, count, List.of(kg), EnumSet.allOf(Load.class));
  }

  public static Problem problem(
      String title,
      int minutes,
      Intervals clock,
      Set<String> limitations,
      List<Owned> equipment,
      String... targets) {
    return Problem.builder()
        .title(title)
        .minutes(minutes)
        .clock(clock)
        .targets(Arrays.stream(targets).map(id -> new Target(id, 1, 1)).toList())
        .equipment(equipment)
        .limitations(limitations)
        .build();
  }
}

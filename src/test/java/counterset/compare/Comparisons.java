package counterset.compare;

import counterset.model.Intervals;
import counterset.model.Owned;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.SolverNote;
import counterset.report.Plans;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Small sessions written by hand, side by side. */
public final class Comparisons {

  private static final SolverNote SCORED = new SolverNote(1, "none", "test", 0, true);

  private static final Owned DUMBBELLS = Plans.owned("dumbbell", 2);
  private static final Owned ANKLE_WEIGHTS = Plans.owned("ankle-weights", 1);

  private Comparisons() {}

  /** Compares plans that are called {@code first}, {@code second}, ... */
  public static Comparison of(Plan... plans) {
    String[] names = {"first", "second", "third", "fourth", "fifth"};
    List<Compared> all = new ArrayList<>();
    for (int i = 0; i < plans.length; i++) {
      boolean led = Facts.of(plans[i]).feasible();
      all.add(
          new Compared(
              i + 1, names[i], plans[i], led ? List.of() : List.of("A reason."), List.of()));
    }
    return new Comparison("By hand", all);
  }

  /** Legs in some minutes, with dumbbells, for a client without limitations. */
  public static Plan dumbbells(int minutes, String... supersets) {
    return plan(minutes, Set.of(), List.of(DUMBBELLS), supersets);
  }

  /** Legs in some minutes, with dumbbells and ankle weights. */
  public static Plan ankleWeights(int minutes, String... supersets) {
    return plan(minutes, Set.of(), List.of(DUMBBELLS, ANKLE_WEIGHTS), supersets);
  }

  /** Legs in some minutes, with dumbbells, for a client with sore knees. */
  public static Plan soreKnees(int minutes, String... supersets) {
    return plan(minutes, Set.of("sore-knees"), List.of(DUMBBELLS), supersets);
  }

  private static Plan plan(
      int minutes, Set<String> limitations, List<Owned> equipment, String... supersets) {
    Problem problem =
        Plans.problem(
            "Legs",
            minutes,
            new Intervals(10, 0, 45, 0, 30, 0, 2, 1),
            limitations,
            equipment,
            "quadriceps",
            "hamstrings");
    return Plans.score(problem, SCORED, List.of(), List.of(), supersets);
  }
}

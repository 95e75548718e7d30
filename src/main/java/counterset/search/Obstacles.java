package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Plan;
import counterset.score.Constraints;
import counterset.score.SupersetEmpty;
import counterset.timeline.SessionLength;
import java.util.List;

/** Which wishes stand in the way of a plan, in plain sentences. */
public final class Obstacles extends ObstacleLines {

  private Obstacles(Plan plan, Catalogue catalogue) {
    super(plan, catalogue, new Outlook(plan.problem(), catalogue));
  }

  /** One line for each obstacle; empty if the plan has work in it, keeps every rule and wish. */
  public static List<String> of(Plan plan, Catalogue catalogue) {
    Obstacles all = new Obstacles(plan, catalogue);
    if (all.outlook.supersets() == 0) {
      return List.of(all.tooShort());
    }
    all.kept();
    if (Goal.of(plan) == Goal.MEDIUM || plan.totals().supersets() == 0) {
      all.lines.addAll(new TargetObstacles(plan, catalogue, all.outlook).lines());
      all.lines.addAll(new WishObstacles(plan, catalogue, all.outlook).lines());
      all.empty();
    }
    return all.lines();
  }

  private String tooShort() {
    int shortest = SessionLength.seconds(problem.clock(), 1);
    return "The clock has room for no superset: the shortest session takes "
        + shortest
        + " s, and the cap is "
        + 60 * problem.minutes()
        + " s.";
  }

  private void kept() {
    for (Keep keep : problem.keep()) {
      Exercise exercise = catalogue.exercises().get(keep.exercise());
      String said = keep.at() + " is kept: " + names.named(keep.exercise());
      if (!outlook.wishes().allow(exercise)) {
        lines.add(
            said
                + ", which is ruled out by "
                + Names.list(outlook.wishes().conflicts(List.of(exercise)))
                + ".");
      } else if (!outlook.stands(keep)) {
        lines.add(
            said
                + ", and the clock has room for "
                + Names.count(outlook.supersets(), "superset")
                + " only.");
      }
    }
    if (lines.isEmpty() && !plan.score().feasible()) {
      List<String> all =
          problem.keep().stream().map(k -> names.named(k.exercise()) + " at " + k.at()).toList();
      lines.add("What is kept cannot be done as it stands: " + Names.list(all) + ".");
    }
  }

  private void empty() {
    boolean holes =
        plan.matches().stream().anyMatch(m -> Constraints.of(m) instanceof SupersetEmpty);
    int different = (int) outlook.pool().stream().map(Exercise::root).distinct().count();
    if (holes && different > 0) {
      lines.add(
          "The clock has room for "
              + Names.count(outlook.places(), "exercise")
              + ", and "
              + Names.count(different, "different exercise")
              + " can be done with all that is asked"
              + (outlook.fillable() < outlook.supersets()
                  ? "."
                  : ", of which too few go together within the pauses."));
    }
  }
}

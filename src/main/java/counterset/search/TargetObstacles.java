package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.model.Plan;
import counterset.model.Target;
import java.util.ArrayList;
import java.util.List;

/** What keeps targets from getting their sets. */
final class TargetObstacles extends ObstacleLines {

  TargetObstacles(Plan plan, Catalogue catalogue, Outlook outlook) {
    super(plan, catalogue, outlook);
    targets();
    room();
  }

  private void targets() {
    for (int i = 0; i < problem.targets().size(); i++) {
      Target target = problem.targets().get(i);
      if (isShort(i) && outlook.missing(target) > 0) {
        List<Exercise> trained =
            catalogue.exercises(Part.MAIN).stream()
                .filter(exercise -> exercise.primary().contains(target.muscle()))
                .toList();
        int possible = outlook.trained(target.muscle());
        lines.add(possible == 0 ? none(target, trained) : few(target, possible, trained));
      }
    }
  }

  private String none(Target target, List<Exercise> trained) {
    String muscle = names.muscle(target.muscle());
    return trained.isEmpty()
        ? "The catalogue has no exercise for " + muscle + "."
        : "No exercise for " + muscle + " is possible with " + conflict(trained) + ".";
  }

  private String few(Target target, int possible, List<Exercise> trained) {
    List<Exercise> others = trained.stream().filter(e -> !outlook.wishes().allow(e)).toList();
    return Names.capital(names.muscle(target.muscle()))
        + " should get "
        + Names.count(target.minSets(), "set")
        + ", and only "
        + Names.count(possible, "different exercise")
        + (possible == 1 ? " is" : " are")
        + " possible"
        + (others.isEmpty() ? "." : " with " + conflict(others) + ".");
  }

  /** Wishes that could be met one by one, but not in the places that there are. */
  private void room() {
    List<String> squeezed = new ArrayList<>();
    for (int i = 0; i < problem.targets().size(); i++) {
      Target target = problem.targets().get(i);
      if (isShort(i) && outlook.missing(target) == 0) {
        squeezed.add(names.muscle(target.muscle()));
      }
    }
    if (!squeezed.isEmpty()) {
      long wanting = problem.targets().stream().filter(t -> t.minSets() > 0).count();
      int sets = problem.targets().stream().mapToInt(Target::minSets).sum();
      lines.add(
          Names.count((int) wanting, "target")
              + (wanting == 1 ? " wants " : " want ")
              + Names.count(sets, "set")
              + ", and "
              + Names.count(outlook.supersets(), "superset")
              + (outlook.supersets() == 1 ? " holds " : " hold ")
              + Names.count(outlook.places(), "exercise")
              + ": no room was found for "
              + Names.list(squeezed)
              + ".");
    }
  }

  private boolean isShort(int target) {
    return !plan.coverage().get(target).isCovered();
  }
}

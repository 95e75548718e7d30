package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Owned;
import counterset.model.Part;
import counterset.model.Plan;
import counterset.score.Constraint;
import counterset.score.Constraints;
import counterset.score.EquipmentUnused;
import counterset.score.ExerciseFilter;
import counterset.score.IncludeMissing;
import java.util.List;

/** What keeps equipment from being used, and exercises that were asked for from being there. */
final class WishObstacles extends ObstacleLines {

  WishObstacles(Plan plan, Catalogue catalogue, Outlook outlook) {
    super(plan, catalogue, outlook);
    unused();
    missing();
  }

  private void unused() {
    for (String id : subjects(EquipmentUnused.class)) {
      List<Exercise> using =
          catalogue.exercises(Part.MAIN).stream()
              .filter(e -> Wishes.uses(e, owned(id), catalogue))
              .filter(new ExerciseFilter(problem, catalogue)::isAskedFor)
              .toList();
      boolean possible = using.stream().anyMatch(outlook.wishes()::allow);
      String item = names.many(id);
      if (using.isEmpty()) {
        lines.add("No exercise of the catalogue trains these targets with " + item + ".");
      } else if (possible) {
        lines.add("No room was found for an exercise that uses " + item + ".");
      } else {
        lines.add("No exercise that uses " + item + " is possible with " + conflict(using) + ".");
      }
    }
  }

  private Owned owned(String id) {
    return problem.equipment().stream().filter(o -> o.id().equals(id)).findFirst().orElseThrow();
  }

  private void missing() {
    for (String id : subjects(IncludeMissing.class)) {
      Exercise exercise = catalogue.exercises().get(id);
      lines.add(
          Names.capital(names.named(id))
              + " is asked for, "
              + (outlook.wishes().allow(exercise)
                  ? "and no room was found for it."
                  : "and is ruled out by "
                      + Names.list(outlook.wishes().conflicts(List.of(exercise)))
                      + "."));
    }
  }

  private List<String> subjects(Class<? extends Constraint> constraint) {
    return plan.matches().stream()
        .filter(match -> constraint.isInstance(Constraints.of(match)))
        .flatMap(match -> match.subject().stream())
        .distinct()
        .toList();
  }
}

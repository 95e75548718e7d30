package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Owned;
import counterset.model.Part;
import counterset.model.Plan;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** What keeps equipment from being used, and exercises that were asked for from being there. */
final class WishObstacles {

  private final Problem problem;
  private final Plan plan;
  private final Catalogue catalogue;
  private final Outlook outlook;
  private final Names names;
  private final List<String> lines = new ArrayList<>();

  WishObstacles(Plan plan, Catalogue catalogue, Outlook outlook) {
    this.problem = plan.problem();
    this.plan = plan;
    this.catalogue = catalogue;
    this.outlook = outlook;
    this.names = new Names(catalogue);
    unused();
    missing();
  }

  List<String> lines() {
    return List.copyOf(lines);
  }

  private void unused() {
    for (String id : subjects("equipmentUnused")) {
      List<Exercise> using =
          catalogue.exercises(Part.MAIN).stream()
              .filter(e -> Wishes.uses(e, owned(id), catalogue))
              .filter(
                  e -> problem.targets().stream().anyMatch(t -> e.primary().contains(t.muscle())))
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
    for (String id : subjects("includeMissing")) {
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

  private List<String> subjects(String constraint) {
    return plan.matches().stream()
        .filter(match -> match.constraint().equals(constraint))
        .flatMap(match -> match.subject().stream())
        .distinct()
        .toList();
  }

  private String conflict(Collection<Exercise> exercises) {
    return String.join(", nor with ", outlook.wishes().conflicts(exercises));
  }
}

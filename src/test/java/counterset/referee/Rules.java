package counterset.referee;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Need;
import counterset.model.Part;
import counterset.model.Problem;
import counterset.model.Target;
import java.util.List;

/** The rules that an exercise breaks or keeps by itself, wherever it stands. */
final class Rules {

  private final Problem problem;
  private final Catalogue catalogue;

  Rules(Problem problem, Catalogue catalogue) {
    this.problem = problem;
    this.catalogue = catalogue;
  }

  /**
   * The main exercises that a session is made of: those that train a target first, and those that
   * the coach keeps or asks for.
   */
  List<Exercise> range() {
    return catalogue.exercises(Part.MAIN).stream()
        .filter(exercise -> isWanted(exercise) || trainsATarget(exercise))
        .toList();
  }

  boolean isWanted(Exercise exercise) {
    return problem.include().contains(exercise.id())
        || problem.keep().stream().map(Keep::exercise).anyMatch(exercise.id()::equals);
  }

  boolean trainsATarget(Exercise exercise) {
    return problem.targets().stream().map(Target::muscle).anyMatch(exercise.primary()::contains);
  }

  /** Level, exclusions, limitations, equipment; and two places for a one-sided exercise. */
  boolean allow(Exercise exercise) {
    return exercise.level() <= problem.level()
        && !Problem.names(problem.exclude(), exercise)
        && problem.limitations().stream()
            .map(catalogue.limitations()::get)
            .allMatch(l -> l.allows(exercise))
        && exercise.needs().stream().allMatch(this::isThere)
        && (!exercise.isUnilateral() || problem.clock().perSuperset() == 2);
  }

  private boolean isThere(Need need) {
    return catalogue.equipment().get(need.equipment()).alwaysThere()
        || problem.equipment().stream()
            .anyMatch(
                owned ->
                    owned.id().equals(need.equipment())
                        && owned.count() >= need.count()
                        && (need.load().isEmpty() || owned.loads().contains(need.load().get())));
  }
}

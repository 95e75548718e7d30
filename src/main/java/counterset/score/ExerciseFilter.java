package counterset.score;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Need;
import counterset.model.Part;
import counterset.model.Problem;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Leaves out, before solving, what could never stand in a session of this problem.
 *
 * <p>What the coach keeps or includes stays in, so that a wish that breaks a rule is shown instead
 * of vanishing.
 */
public final class ExerciseFilter {

  private final Problem problem;
  private final Catalogue catalogue;
  private final Set<String> wanted;
  private final Wanted asked;

  public ExerciseFilter(Problem problem, Catalogue catalogue) {
    this.problem = problem;
    this.catalogue = catalogue;
    this.wanted = problem.keep().stream().map(Keep::exercise).collect(Collectors.toSet());
    this.wanted.addAll(problem.include());
    this.asked = Wanted.of(problem, catalogue);
  }

  /** The main exercises that may be used, in the order of the catalogue. */
  public List<Exercise> main() {
    return catalogue.exercises(Part.MAIN).stream()
        .filter(
            exercise ->
                wanted.contains(exercise.id()) || isUsable(exercise) && isAskedFor(exercise))
        .toList();
  }

  /**
   * The exercises for another part of the session: safe, allowed and possible with what there is.
   */
  public List<Exercise> part(Part part) {
    return catalogue.exercises(part).stream().filter(this::isUsable).toList();
  }

  /**
   * Whether an exercise trains a target: first of all, or besides in a movement pattern that the
   * targets want.
   */
  public boolean isAskedFor(Exercise exercise) {
    return asked.isTrainedBy(exercise);
  }

  private boolean isUsable(Exercise exercise) {
    return exercise.level() <= problem.level()
        && !Problem.names(problem.exclude(), exercise)
        && problem.limitations().stream()
            .allMatch(id -> catalogue.limitations().get(id).allows(exercise))
        && exercise.needs().stream().allMatch(need -> isServed(need, problem, catalogue))
        && (!exercise.isUnilateral()
            || exercise.part() != Part.MAIN
            || problem.clock().perSuperset() == 2);
  }

  /** Whether the client has what an exercise needs, or everyone does. */
  static boolean isServed(Need need, Problem problem, Catalogue catalogue) {
    return catalogue.equipment().get(need.equipment()).alwaysThere()
        || problem.equipment().stream().anyMatch(owned -> owned.serves(need));
  }
}

package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import counterset.model.Problem;
import counterset.model.Target;
import java.util.ArrayList;
import java.util.List;

/** Why an exercise cannot stand in any session of a problem. */
public final class UnsuitedWords {

  private UnsuitedWords() {}

  /** Clauses after its name, such as {@code needs a chair}; none if nothing speaks against it. */
  public static List<String> of(Exercise exercise, Problem problem, Catalogue catalogue) {
    if (exercise.part() != Part.MAIN) {
      return List.of("is for the " + exercise.part().id());
    }
    RuleWords rules = new RuleWords(problem, catalogue);
    List<String> reasons = new ArrayList<>();
    String broken = rules.broken(exercise);
    if (!broken.isEmpty()) {
      reasons.add("goes against " + broken);
    }
    String missing = rules.missing(exercise);
    if (!missing.isEmpty()) {
      reasons.add("needs " + missing + ", not among the equipment");
    }
    if (exercise.level() > problem.level()) {
      reasons.add("is level " + exercise.level() + ", above level " + problem.level());
    }
    if (Problem.names(problem.exclude(), exercise)) {
      reasons.add("is excluded");
    }
    int positions = problem.clock().perSuperset();
    if (exercise.isUnilateral() && positions != 2) {
      reasons.add("is one-sided, which needs supersets of two");
    }
    if (problem.targets().stream().map(Target::muscle).noneMatch(exercise.primary()::contains)) {
      reasons.add("trains no target first");
    }
    return reasons;
  }
}

package counterset.search;

import counterset.model.Exercise;
import counterset.model.Match;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Target;
import counterset.model.TargetCoverage;
import counterset.score.Constraints;
import counterset.score.Level;
import counterset.score.TargetUncovered;
import java.util.List;

/**
 * Which changes are worth trying when every wish can be met for itself and only the places are too
 * few. A rule of thumb, which may leave out a change that would have helped.
 */
final class Relevance {

  private final Problem problem;
  private final Plan plan;
  private final Outlook before;
  private final boolean onlyRoom;

  Relevance(Plan plan, Outlook before) {
    this.problem = plan.problem();
    this.plan = plan;
    this.before = before;
    this.onlyRoom =
        Goal.of(plan) == Goal.MEDIUM
            && before.mediumShortfall() == 0
            && plan.matches().stream()
                .filter(Relevance::isMedium)
                .allMatch(match -> Constraints.of(match) instanceof TargetUncovered);
  }

  /** Whether a change could be of any use, perhaps together with another one. */
  boolean matters(Problem changed, Outlook after) {
    if (!onlyRoom || !wantsTheSameOtherwise(changed)) {
      return true;
    }
    return after.pool().stream()
        .filter(exercise -> !before.pool().contains(exercise))
        .anyMatch(this::isDenser);
  }

  /** Whether changes could be enough: if they only ask for less, then for little enough. */
  boolean suffices(Problem changed) {
    boolean onlyTargets =
        changed.minutes() == problem.minutes()
            && changed.clock().equals(problem.clock())
            && changed.keep().equals(problem.keep())
            && changed.include().equals(problem.include());
    if (!onlyRoom || !onlyTargets || changed.targets().equals(problem.targets())) {
      return true;
    }
    int freed = 0;
    int open = 0;
    for (int i = 0; i < problem.targets().size(); i++) {
      Target target = problem.targets().get(i);
      TargetCoverage coverage = plan.coverage().get(i);
      int wanted =
          changed.targets().stream()
              .filter(t -> t.muscle().equals(target.muscle()))
              .mapToInt(Target::minSets)
              .findFirst()
              .orElse(0);
      freed += Math.max(0, Math.min(coverage.direct(), target.minSets()) - wanted);
      open += Math.max(0, wanted - coverage.direct());
    }
    return open <= freed;
  }

  private boolean wantsTheSameOtherwise(Problem changed) {
    return changed.minutes() == problem.minutes()
        && changed.clock().equals(problem.clock())
        && changed.targets().equals(problem.targets())
        && changed.keep().equals(problem.keep())
        && changed.include().equals(problem.include())
        && changed.tracks().equals(problem.tracks());
  }

  /** Whether it trains more targets in a place than all that there was for one of them. */
  private boolean isDenser(Exercise exercise) {
    List<String> muscles =
        problem.targets().stream()
            .map(Target::muscle)
            .filter(exercise.primary()::contains)
            .toList();
    return muscles.stream()
        .anyMatch(
            muscle ->
                before.pool().stream()
                    .filter(other -> other.primary().contains(muscle))
                    .allMatch(other -> density(other) < density(exercise)));
  }

  private int density(Exercise exercise) {
    int targets =
        (int)
            problem.targets().stream().filter(t -> exercise.primary().contains(t.muscle())).count();
    return exercise.isUnilateral() ? targets : 2 * targets;
  }

  private static boolean isMedium(Match match) {
    return Constraints.of(match).level() == Level.MEDIUM;
  }
}

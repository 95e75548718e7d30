package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Solves changed problems, each once, as long as nobody stops it. */
final class Trials {

  private final Plan plan;
  private final Catalogue catalogue;
  private final Goal goal;
  private final Map<List<Change>, WayOut> done = new LinkedHashMap<>();
  private volatile boolean stopped;

  Trials(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.catalogue = catalogue;
    this.goal = Goal.of(plan);
  }

  /** What comes of some changes. */
  WayOut of(List<Change> changes) {
    return done.computeIfAbsent(
        changes,
        key -> {
          List<String> phrases = changes.stream().map(Change::phrase).toList();
          return solve(phrases, changed(changes), Effort.QUICK);
        });
  }

  /** What comes of another problem. */
  WayOut solve(List<String> phrases, Problem changed, Effort effort) {
    Plan better =
        new SessionPlanner(catalogue, plan.solver().version()).plan(changed, Limit.of(effort));
    return new WayOut(phrases, changed, better, goal.shortfall(better) == 0);
  }

  /** The problem with some changes. */
  Problem changed(List<Change> changes) {
    Problem changed = plan.problem();
    for (Change change : changes) {
      changed = change.applyTo(changed);
    }
    return changed;
  }

  /** Asks that no further trial begins. */
  void stop() {
    stopped = true;
  }

  boolean isStopped() {
    return stopped;
  }
}

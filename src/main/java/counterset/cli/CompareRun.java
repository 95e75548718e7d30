package counterset.cli;

import counterset.compare.Compared;
import counterset.explain.Unmet;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.solve.Limit;
import counterset.solve.Obstacles;
import counterset.solve.Options;
import counterset.solve.SessionPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Plans what is not planned yet, several at once, and scores what is. */
final class CompareRun {

  private final Shell shell;
  private final Catalogue catalogue;
  private final Limit limit;
  private final Queue<SessionPlanner> planners = new ConcurrentLinkedQueue<>();
  private volatile boolean stopped;

  CompareRun(Shell shell, Catalogue catalogue, Limit limit) {
    this.shell = shell;
    this.catalogue = catalogue;
    this.limit = limit;
  }

  /** All of them, in their order. */
  List<Compared> all(List<CompareEntry> entries) {
    int cores = Runtime.getRuntime().availableProcessors();
    int each = Math.max(1, cores / entries.size());
    BatchProgress progress = new BatchProgress(shell, entries.size());
    progress.show();
    List<Plan> plans =
        Interruption.during(
            () ->
                new BatchRun(cores)
                    .all(entries, entry -> plan(entry, each), plan -> progress.done(false)),
            this::stop);
    progress.clear();
    return IntStream.range(0, plans.size())
        .mapToObj(i -> compared(i + 1, entries.get(i).label(), plans.get(i)))
        .toList();
  }

  /** Several plans of one problem. */
  List<Compared> options(Problem problem, int count) {
    Options options = new Options(catalogue, Version.current());
    List<Plan> plans =
        Interruption.during(
            () ->
                Progress.during(
                    shell, "Planning " + count, () -> options.plans(problem, count, limit)),
            options::stop);
    return IntStream.range(0, plans.size())
        .mapToObj(i -> compared(i + 1, onlyHere(plans.get(i), plans), plans.get(i)))
        .toList();
  }

  /** What tells plans of one problem apart: the first exercises that no other has. */
  private static String onlyHere(Plan plan, List<Plan> plans) {
    Set<String> elsewhere =
        plans.stream()
            .filter(other -> other != plan)
            .flatMap(other -> other.session().work())
            .map(Exercise::root)
            .collect(Collectors.toSet());
    List<String> names =
        plan.session()
            .work()
            .filter(exercise -> !elsewhere.contains(exercise.root()))
            .map(Exercise::name)
            .distinct()
            .limit(2)
            .toList();
    return names.isEmpty() ? "plan" : "with " + String.join(" and ", names);
  }

  private Plan plan(CompareEntry entry, int threads) {
    if (entry.file().isPresent()) {
      return new Recheck(entry.file().get(), catalogue).plan();
    }
    SessionPlanner planner = new SessionPlanner(catalogue, Version.current(), threads);
    planners.add(planner);
    if (stopped) {
      planner.stop();
    }
    return planner.plan(entry.problem(), limit);
  }

  private void stop() {
    stopped = true;
    planners.forEach(SessionPlanner::stop);
  }

  private Compared compared(int number, String label, Plan plan) {
    boolean whole = plan.solver().complete();
    return new Compared(
        number,
        whole ? label : label + ", interrupted",
        plan,
        plan.canBeLed() ? List.of() : reasons(plan),
        Unmet.wishes(plan, catalogue));
  }

  private List<String> reasons(Plan plan) {
    List<String> reasons = new ArrayList<>(Unmet.rules(plan, catalogue));
    if (!plan.solver().complete()) {
      reasons.add("The search was interrupted before it found a session.");
      return reasons;
    }
    reasons.addAll(Obstacles.of(plan, catalogue));
    return reasons.isEmpty()
        ? List.of("No exercise of the catalogue suits all that was asked for.")
        : reasons;
  }
}

package counterset.compare;

import counterset.batch.InOrder;
import counterset.explain.Unmet;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.search.Limit;
import counterset.search.Obstacles;
import counterset.search.Options;
import counterset.search.SessionPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Plans what is not planned yet, several at once, and scores what is. */
public final class CompareRun {

  private final Catalogue catalogue;
  private final Limit limit;
  private final String version;
  private final Options options;
  private final Queue<SessionPlanner> planners = new ConcurrentLinkedQueue<>();
  private volatile boolean stopped;

  /**
   * A run.
   *
   * @param version of this program
   */
  public CompareRun(Catalogue catalogue, Limit limit, String version) {
    this.version = version;
    this.options = new Options(catalogue, version);
    this.catalogue = catalogue;
    this.limit = limit;
  }

  /**
   * All of them, in their order.
   *
   * @param done told of each that is planned
   */
  public List<Compared> all(List<CompareEntry> entries, Runnable done) {
    int cores = Runtime.getRuntime().availableProcessors();
    int each = Math.max(1, cores / entries.size());
    List<Plan> plans =
        new InOrder(cores).all(entries, entry -> plan(entry, each), plan -> done.run());
    return IntStream.range(0, plans.size())
        .mapToObj(i -> compared(i + 1, entries.get(i).label(), plans.get(i)))
        .toList();
  }

  /** Several plans of one problem. */
  public List<Compared> options(Problem problem, int count) {
    List<Plan> plans = options.plans(problem, count, limit);
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
    if (entry.plan().isPresent()) {
      return entry.plan().get();
    }
    SessionPlanner planner = new SessionPlanner(catalogue, version, threads);
    planners.add(planner);
    if (stopped) {
      planner.stop();
    }
    return planner.plan(entry.problem(), limit);
  }

  /** Ends all searches; may be called from any thread. */
  public void stop() {
    stopped = true;
    options.stop();
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

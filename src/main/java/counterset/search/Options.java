package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Plan;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.Superset;
import counterset.score.ExerciseFilter;
import counterset.score.Lineup;
import counterset.score.SessionFacts;
import counterset.timeline.SessionLength;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Several plans of one problem, each two of which differ in at least half of their exercises: of
 * the exercises of either plan at most half are in the other. Variants of one exercise count as the
 * same.
 *
 * <p>The first is the plan that {@link SessionPlanner} makes. Each further one is the best found
 * among the sessions that are far enough from all before.
 */
public final class Options {

  /** More are never asked for at once. */
  public static final int MOST = 9;

  private final Catalogue catalogue;
  private final String version;
  private final Halt halt = new Halt();

  /**
   * Ready to plan.
   *
   * @param version of this program, for the notes in plans
   */
  public Options(Catalogue catalogue, String version) {
    this.catalogue = catalogue;
    this.version = version;
  }

  /**
   * Plans of a problem, the best first.
   *
   * <p>There are fewer than asked for if the problem does not allow more: no further session that
   * is far enough from the others breaks no rule and leaves no more places empty than the first. A
   * problem that no session fits has one plan, which says so.
   *
   * @param count how many, 2 to {@link #MOST}
   * @param limit of each plan
   * @throws IllegalArgumentException if the count is out of range
   */
  public List<Plan> plans(Problem problem, int count, Limit limit) {
    if (count < 2 || count > MOST) {
      throw new IllegalArgumentException("The options (" + count + ") must be 2 to " + MOST + ".");
    }
    int supersets = SessionLength.supersetsThatFit(problem.clock(), problem.minutes());
    SessionFacts facts =
        new SessionFacts(
            problem, catalogue, new ExerciseFilter(problem, catalogue).main(), supersets);
    List<Plan> plans = new ArrayList<>();
    while (plans.isEmpty() || plans.size() < count && !halt.isStopped()) {
      Plan next = plan(facts, plans, limit);
      if (!plans.isEmpty() && !isOption(next, plans)) {
        break;
      }
      plans.add(next);
      if (!next.score().feasible()) {
        break;
      }
    }
    plans.sort(Comparator.comparing((Plan plan) -> worth(plan)).reversed());
    return List.copyOf(plans);
  }

  private Plan plan(SessionFacts facts, List<Plan> others, Limit limit) {
    Problem problem = facts.problem();
    Apart fence = new Apart(facts, others.stream().map(Options::roots).toList());
    Search search = halt.begin(new Search());
    Task.Day day = Task.Day.empty(Casting.of(Lineup.empty(facts)));
    Optional<Fence> away = others.isEmpty() ? Optional.empty() : Optional.of(fence);
    Task task = new Task(List.of(day), Optional.empty(), away);
    Lineup best = search.best(task, problem.seed(), limit).get(0);
    Session session =
        new Surroundings(problem, catalogue).around(best.supersets(), best.modifications());
    boolean complete = !halt.isStopped();
    SolverNote note =
        new SolverNote(
            problem.seed(),
            limit.name(),
            version,
            complete && limit.isCounted() ? search.moves() : 0,
            complete);
    return new Assembly(problem, catalogue).plan(session, best, note);
  }

  private static boolean isOption(Plan plan, List<Plan> others) {
    return plan.score().feasible()
        && filled(plan) >= filled(others.get(0))
        && others.stream().allMatch(other -> differ(plan, other));
  }

  /** Whether at least half of the exercises of each of two plans are not in the other. */
  public static boolean differ(Plan one, Plan other) {
    Set<String> here = roots(one);
    Set<String> there = roots(other);
    Set<String> shared = new HashSet<>(here);
    shared.retainAll(there);
    return 2 * shared.size() <= Math.min(here.size(), there.size());
  }

  private static Set<String> roots(Plan plan) {
    return plan.session().work().map(Exercise::root).collect(Collectors.toSet());
  }

  private static int filled(Plan plan) {
    return plan.session().supersets().stream().map(Superset::exercises).mapToInt(List::size).sum();
  }

  private static Worth worth(Plan plan) {
    return new Worth(plan.score().hard(), plan.score().medium(), plan.score().soft());
  }

  /** Ends soon, with the plans found so far. May be called from any thread. */
  public void stop() {
    halt.stop();
  }
}

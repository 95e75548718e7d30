package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The smallest sets of changes that free a problem, each tried by solving what it leads to.
 *
 * <p>Single changes come first, and pairs only where no single one helps. What a lower bound rules
 * out is not tried; beyond {@link #MOST_SINGLES} single changes and {@link #MOST_PAIRS} pairs
 * nothing is. The order is fixed and every search is counted in moves, so the same request gives
 * the same answer.
 */
public final class WaysOut {

  /** As many as a coach wants to read. */
  static final int MOST = 5;

  /** These keep an explanation within a few seconds. */
  static final int MOST_SINGLES = 30;

  static final int MOST_PAIRS = 20;

  private final Plan plan;
  private final Catalogue catalogue;
  private final Goal goal;
  private final Outlook before;
  private final Relevance relevance;
  private final Trials trials;

  /**
   * A search for ways out.
   *
   * @param plan the best plan of a problem, which breaks a rule, has no work in it or leaves a wish
   *     unmet
   */
  public WaysOut(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.catalogue = catalogue;
    this.goal = Goal.of(plan);
    this.before = new Outlook(plan.problem(), catalogue);
    this.relevance = new Relevance(plan, before);
    this.trials = new Trials(plan, catalogue);
  }

  /** The ways out, the cheapest first; empty if more than two changes would be needed. */
  public List<WayOut> find() {
    List<WayOut> found = goal.shortfall(before) == 0 ? again() : List.of();
    if (!found.isEmpty()) {
      return found;
    }
    List<Change> all = Changes.of(plan.problem(), plan, catalogue);
    List<Change> changes = all.stream().filter(this::matters).toList();
    List<List<Change>> singles = changes.stream().map(List::of).toList();
    found = freeing(singles, MOST_SINGLES);
    if (found.isEmpty()) {
      found = freeing(pairs(changes), MOST_PAIRS);
    }
    return found.isEmpty() && goal == Goal.MEDIUM ? easing(singles) : found;
  }

  /** Ends the search soon; what has been found so far counts. May be called from any thread. */
  public void stop() {
    trials.stop();
  }

  /** The same problem once more: nothing need change where the search was merely too short. */
  private List<WayOut> again() {
    Problem problem = plan.problem();
    boolean quick = plan.solver().effort().equals(Effort.QUICK.id());
    Problem same = quick ? problem : problem.withSeed(problem.seed() + 1);
    String phrase =
        quick ? "a longer search (--effort standard)" : "another seed (--seed " + same.seed() + ")";
    WayOut way = trials.solve(List.of(phrase), same, Effort.STANDARD);
    return way.whole() ? List.of(way) : List.of();
  }

  private static List<List<Change>> pairs(List<Change> changes) {
    List<List<Change>> pairs = new ArrayList<>();
    for (int second = 1; second < changes.size(); second++) {
      for (int first = 0; first < second; first++) {
        if (!changes.get(first).topic().equals(changes.get(second).topic())) {
          pairs.add(List.of(changes.get(first), changes.get(second)));
        }
      }
    }
    return pairs;
  }

  /** The first few sets of changes that leave nothing in the way. */
  private List<WayOut> freeing(List<List<Change>> sets, int mostTries) {
    Map<List<Change>, WayOut> found = new LinkedHashMap<>();
    Set<List<String>> helped = new HashSet<>();
    List<List<Change>> promising =
        sets.parallelStream().filter(set -> isPromising(set, 0)).toList();
    int tries = 0;
    for (List<Change> set : promising) {
      List<String> topics = set.stream().map(Change::topic).toList();
      if (!helped.contains(topics)) {
        if (found.size() == MOST || tries++ == mostTries || trials.isStopped()) {
          break;
        }
        if (trials.of(set).whole()) {
          helped.add(topics);
          smallest(set).forEach(smaller -> found.put(smaller, trials.of(smaller)));
        }
      }
    }
    return List.copyOf(found.values());
  }

  /** Those of its single changes that free all by themselves; else the set itself. */
  private List<List<Change>> smallest(List<Change> set) {
    List<List<Change>> singles =
        set.stream().map(List::of).filter(single -> trials.of(single).whole()).toList();
    return singles.isEmpty() ? List.of(set) : singles;
  }

  /** The single changes that leave least in the way, of each topic the smallest. */
  private List<WayOut> easing(List<List<Change>> singles) {
    Map<String, WayOut> best = new LinkedHashMap<>();
    int[] least = {goal.shortfall(plan) - 1};
    singles.stream()
        .filter(set -> isPromising(set, goal.shortfall(plan) - 1))
        .limit(MOST_SINGLES)
        .takeWhile(set -> !trials.isStopped())
        .forEach(
            set -> {
              int shortfall = goal.shortfall(trials.of(set).plan());
              if (shortfall < least[0]) {
                best.clear();
              }
              if (shortfall <= least[0]) {
                least[0] = shortfall;
                best.putIfAbsent(set.get(0).topic(), trials.of(set));
              }
            });
    return best.values().stream().limit(MOST).toList();
  }

  private boolean matters(Change change) {
    Problem changed = trials.changed(List.of(change));
    return relevance.matters(changed, new Outlook(changed, catalogue));
  }

  private boolean isPromising(List<Change> set, int most) {
    Problem changed = trials.changed(set);
    return (most > 0 || relevance.suffices(changed))
        && goal.shortfall(new Outlook(changed, catalogue)) <= most;
  }
}

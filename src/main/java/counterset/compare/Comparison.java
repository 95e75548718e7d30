package counterset.compare;

import counterset.model.Intervals;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Plans side by side.
 *
 * <p>A score says how well a plan does what its own problem asks. Of one problem, whole scores are
 * compared; of different ones, points a superset.
 *
 * @param title what was asked for
 * @param all in their order; at least one
 */
public record Comparison(String title, List<Compared> all) {

  public Comparison {
    all = List.copyOf(all);
    if (all.isEmpty()) {
      throw new IllegalArgumentException("There is nothing to compare.");
    }
  }

  /** Those that can be led, in their order. */
  public List<Compared> feasible() {
    return all.stream().filter(Compared::feasible).toList();
  }

  /** Whether all are plans of one problem; its title and its seed do not count. */
  public boolean sameProblem() {
    return all.stream().allMatch(it -> haveOneProblem(it, all.get(0)));
  }

  static boolean haveOneProblem(Compared one, Compared other) {
    return asked(one.plan().problem()).equals(asked(other.plan().problem()));
  }

  /** Whether all with work in them have as many supersets, of one shape: points compare whole. */
  public boolean sameShape() {
    List<Compared> working = all.stream().filter(it -> it.facts().supersets() > 0).toList();
    return working.stream().allMatch(it -> haveOneShape(it, working.get(0)));
  }

  static boolean haveOneShape(Compared one, Compared other) {
    return one.facts().supersets() == other.facts().supersets()
        && shape(one.plan().problem().clock()).equals(shape(other.plan().problem().clock()));
  }

  /** Whether all have as many positions in a superset, and as many rounds. */
  public boolean sameSupersets() {
    return all.stream().map(it -> shape(it.plan().problem().clock())).distinct().count() == 1;
  }

  /**
   * The better first: what can be led, then fewer broken rules, then fewer unmet wishes, then more
   * points (a superset, unless the problem is the same); what is as good stays in its order.
   */
  public List<Compared> ranked() {
    List<Compared> ranked = new ArrayList<>(all);
    ranked.sort(better());
    return ranked;
  }

  /** The better first. */
  Comparator<Compared> better() {
    return Comparator.comparing((Compared it) -> !it.feasible())
        .thenComparing(it -> -it.facts().hard())
        .thenComparing(it -> -it.facts().medium())
        .thenComparing(sameProblem() ? Comparison::byPoints : Comparison::byPointsPerSuperset);
  }

  private static int byPoints(Compared one, Compared other) {
    return Integer.compare(other.facts().points(), one.facts().points());
  }

  /** In whole numbers, so that equal quotients are equal. */
  private static int byPointsPerSuperset(Compared one, Compared other) {
    Facts here = one.facts();
    Facts there = other.facts();
    return Long.compare(
        (long) there.points() * Math.max(1, here.supersets()),
        (long) here.points() * Math.max(1, there.supersets()));
  }

  /** Everything that a problem asks. */
  private static List<Object> asked(Problem problem) {
    return List.of(
        problem.minutes(),
        problem.clock(),
        problem.targets(),
        problem.equipment(),
        problem.limitations(),
        problem.tracks(),
        problem.level(),
        problem.pairing(),
        problem.include(),
        problem.exclude(),
        problem.keep(),
        problem.likes(),
        problem.dislikes(),
        problem.recent(),
        problem.date(),
        problem.weights());
  }

  private static List<Integer> shape(Intervals clock) {
    return List.of(clock.perSuperset(), clock.rounds());
  }
}

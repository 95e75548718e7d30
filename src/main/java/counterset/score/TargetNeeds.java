package counterset.score;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.model.Target;
import java.util.List;
import java.util.Set;

/**
 * How many sets each target of a problem needs, and what an exercise gives it, in quarter sets.
 *
 * <p>A working set counts fully for what it trains first and half for what helps (fractional
 * counting: Pelland et al. 2024, preprint); an easy one counts half of that. A muscle group that
 * came with a region needs one set in all, a small one half a set; one that is asked for by its own
 * name, or with a number of sets, needs that many direct sets. A group of a region that only
 * exercises of last resort could train needs none.
 */
public final class TargetNeeds {

  /** Quarters of a set. */
  static final int SET = 4;

  private static final int DIRECT = 2;
  private static final Set<String> LARGE =
      Set.of(
          "quadriceps",
          "hamstrings",
          "gluteus-maximus",
          "chest",
          "upper-back",
          "shoulders",
          "abdominals");

  private final boolean[] directOnly;
  private final boolean[] easyCounts;
  private final int[] needs;

  TargetNeeds(Problem problem, Catalogue catalogue, Patterns patterns, List<Candidate> candidates) {
    int targets = problem.targets().size();
    directOnly = new boolean[targets];
    easyCounts = new boolean[targets];
    needs = new int[targets];
    for (int target = 0; target < targets; target++) {
      int own = target;
      Target asked = problem.targets().get(target);
      directOnly[target] = isDirect(asked, patterns.wanted(), catalogue);
      easyCounts[target] =
          candidates.stream()
              .noneMatch(
                  c -> c.usable() && c.halfSets()[own] == DIRECT && c.merit().fillsPattern());
      boolean lastResortOnly =
          candidates.stream()
              .noneMatch(
                  c ->
                      c.usable()
                          && c.halfSets()[own] > 0
                          && c.merit().standing() > Exercise.LAST_RESORT);
      needs[target] =
          directOnly[target]
              ? SET * asked.minSets()
              : lastResortOnly ? 0 : LARGE.contains(asked.muscle()) ? SET : SET / 2;
    }
  }

  /** Whether a target of a problem needs direct sets. */
  public static boolean isDirect(Problem problem, Catalogue catalogue, Target target) {
    return isDirect(target, Wanted.of(problem, catalogue), catalogue);
  }

  private static boolean isDirect(Target target, Wanted wanted, Catalogue catalogue) {
    return target.minSets() != 1
        || !wanted.cameWithRegion(catalogue.muscles().get(target.muscle()));
  }

  /** Quarter sets that a target needs, at least 0. */
  public int of(int target) {
    return needs[target];
  }

  /** Quarter sets that an exercise gives a target, for its need. */
  public int credit(Candidate exercise, int target) {
    int halves = exercise.halfSets()[target];
    if (directOnly[target] && halves < DIRECT) {
      return 0;
    }
    boolean counts = exercise.merit().isWorking() || directOnly[target] && easyCounts[target];
    return counts ? 2 * halves : halves;
  }
}

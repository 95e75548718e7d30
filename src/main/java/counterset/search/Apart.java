package counterset.search;

import counterset.score.Candidate;
import counterset.score.SessionFacts;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Keeps a search at sessions that share at most half of their exercises with each of some others:
 * half of their own and half of the other's. Variants of one exercise count as the same.
 *
 * <p>While places are still empty they count as if each would be filled by one more exercise, so
 * that a search can begin with an empty session.
 */
public final class Apart implements Fence {

  private final boolean[][] inOther;
  private final int[] sizes;
  private final int roots;

  /**
   * A fence.
   *
   * @param others by session, the exercises in it as {@link counterset.model.Exercise#root} has
   *     them
   */
  public Apart(SessionFacts facts, List<? extends Collection<String>> others) {
    roots = facts.candidates().stream().mapToInt(Candidate::root).max().orElse(-1) + 1;
    inOther = new boolean[others.size()][roots];
    sizes = new int[others.size()];
    for (int other = 0; other < sizes.length; other++) {
      Set<String> exercises = new HashSet<>(others.get(other));
      sizes[other] = exercises.size();
      for (Candidate candidate : facts.candidates()) {
        inOther[other][candidate.root()] = exercises.contains(candidate.exercise().root());
      }
    }
  }

  @Override
  public boolean admits(Candidate[] places) {
    boolean[] seen = new boolean[roots];
    int[] shared = new int[sizes.length];
    int size = 0;
    for (Candidate candidate : places) {
      if (candidate == null) {
        size++;
      } else if (!seen[candidate.root()]) {
        seen[candidate.root()] = true;
        size++;
        for (int other = 0; other < shared.length; other++) {
          shared[other] += inOther[other][candidate.root()] ? 1 : 0;
        }
      }
    }
    for (int other = 0; other < shared.length; other++) {
      if (2 * shared[other] > Math.min(size, sizes[other])) {
        return false;
      }
    }
    return true;
  }
}

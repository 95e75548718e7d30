package counterset.search;

import counterset.score.Candidate;
import java.util.Optional;

/** Keeps a search within so many changes of a given session. */
public final class FewChanges implements Fence {

  private final Candidate[] home;
  private final int perSuperset;
  private final int most;

  /**
   * A fence.
   *
   * @param home the given session by place, null where there is nothing
   * @param most how many changes are allowed, at least 0
   */
  public FewChanges(Candidate[] home, int perSuperset, int most) {
    if (most < 0) {
      throw new IllegalArgumentException("The changes (" + most + ") must be 0 or more.");
    }
    this.home = home.clone();
    this.perSuperset = perSuperset;
    this.most = most;
  }

  @Override
  public boolean admits(Candidate[] places) {
    return count(home, places, perSuperset) <= most;
  }

  @Override
  public Optional<Candidate[]> home() {
    return Optional.of(home);
  }

  /**
   * How many changes lead from one session to another: one for each place that holds something else
   * than before, or nothing any more. A one-sided exercise that comes to fill a superset, or leaves
   * one empty, counts once for both sides.
   */
  public static int count(Candidate[] from, Candidate[] to, int perSuperset) {
    int changes = 0;
    for (int place = 0; place < to.length; place++) {
      if (from[place] != to[place] && !isSecondSide(from, to, place, perSuperset)) {
        changes++;
      }
    }
    return changes;
  }

  private static boolean isSecondSide(
      Candidate[] from, Candidate[] to, int place, int perSuperset) {
    if (perSuperset != 2 || place % 2 == 0) {
      return false;
    }
    Candidate what = to[place] == null ? from[place] : to[place];
    return what.unilateral()
        && from[place - 1] != to[place - 1]
        && to[place - 1] == to[place]
        && (to[place] != null || from[place - 1] == from[place]);
  }
}

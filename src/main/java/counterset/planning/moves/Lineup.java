package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Change;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import java.util.List;

/** A session while it is being changed: what stands in each place, and which places are kept. */
final class Lineup {

  private final Candidate[] candidates;
  private final boolean[] pinned;
  private final int[] rootCount;
  private final int perSuperset;
  private final int supersets;

  Lineup(SessionSolution solution) {
    perSuperset = solution.getFacts().perSuperset();
    supersets = solution.getFacts().supersets();
    List<Place> places = solution.getPlaces();
    candidates = new Candidate[places.size()];
    pinned = new boolean[candidates.length];
    int roots =
        solution.getFacts().candidates().stream().mapToInt(Candidate::root).max().orElse(-1);
    rootCount = new int[roots + 1];
    for (int place = 0; place < candidates.length; place++) {
      candidates[place] = places.get(place).getCandidate();
      pinned[place] = places.get(place).isPinned();
      count(candidates[place], 1);
    }
  }

  int supersets() {
    return supersets;
  }

  int perSuperset() {
    return perSuperset;
  }

  /** How many places there are. */
  int size() {
    return candidates.length;
  }

  /** What stands in each place, null for nothing; to be read only. */
  Candidate[] candidates() {
    return candidates;
  }

  Candidate at(int place) {
    return candidates[place];
  }

  boolean isPinned(int place) {
    return pinned[place];
  }

  /** Makes a change. */
  void make(Change change) {
    for (int i = 0; i < change.size(); i++) {
      count(candidates[change.place(i)], -1);
    }
    change.exchange(candidates);
    for (int i = 0; i < change.size(); i++) {
      count(candidates[change.place(i)], 1);
    }
  }

  /** Goes back to what stood in the places before. */
  void restore(Candidate[] earlier) {
    for (int place = 0; place < candidates.length; place++) {
      count(candidates[place], -1);
      candidates[place] = earlier[place];
      count(candidates[place], 1);
    }
  }

  private void count(Candidate candidate, int more) {
    if (candidate != null) {
      rootCount[candidate.root()] += more;
    }
  }

  /** Whether no place of these supersets is pinned. */
  boolean isFree(int firstSuperset, int lastSuperset) {
    for (int place = firstSuperset * perSuperset;
        place < (lastSuperset + 1) * perSuperset;
        place++) {
      if (pinned[place]) {
        return false;
      }
    }
    return true;
  }

  /** Whether an exercise or a variant of it stands outside some supersets. */
  boolean isOutside(int root, int firstSuperset, int lastSuperset) {
    int outside = rootCount[root];
    for (int place = firstSuperset * perSuperset;
        outside > 0 && place < (lastSuperset + 1) * perSuperset;
        place++) {
      outside -= candidates[place] != null && candidates[place].root() == root ? 1 : 0;
    }
    return outside > 0;
  }

  /** Whether an exercise or a variant of it stands in another place. */
  boolean isElsewhere(int root, int place) {
    Candidate here = candidates[place];
    return rootCount[root] > (here != null && here.root() == root ? 1 : 0);
  }

  /** Whether a place holds an exercise that shares its superset with others. */
  boolean isSingle(int place) {
    return candidates[place] != null && !candidates[place].unilateral();
  }
}

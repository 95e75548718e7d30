package counterset.search;

import counterset.score.Candidate;
import counterset.score.Change;
import counterset.score.SessionFacts;

/** A session while it is being changed: what stands in each place, and which places are kept. */
final class Board {

  private final Candidate[] candidates;
  private final boolean[] pinned;
  private final int[] rootCount;
  private final int perSuperset;
  private final int supersets;

  /** An empty session. */
  Board(SessionFacts facts, boolean[] pinned) {
    this.perSuperset = facts.perSuperset();
    this.supersets = facts.supersets();
    this.pinned = pinned;
    candidates = new Candidate[pinned.length];
    rootCount = new int[facts.candidates().stream().mapToInt(Candidate::root).max().orElse(-1) + 1];
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

  /** Puts something else in a place. */
  void put(int place, Candidate candidate) {
    if (candidates[place] != candidate) {
      count(candidates[place], -1);
      candidates[place] = candidate;
      count(candidate, 1);
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

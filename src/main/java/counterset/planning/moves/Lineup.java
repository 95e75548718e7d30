package counterset.planning.moves;

import counterset.planning.Candidate;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import java.util.List;

/** The places of the working solution by superset, as moves look at them. */
final class Lineup {

  private final List<Place> places;
  private final int perSuperset;
  private final int supersets;

  Lineup(SessionSolution solution) {
    places = solution.getPlaces();
    perSuperset = solution.getFacts().perSuperset();
    supersets = solution.getFacts().supersets();
  }

  int supersets() {
    return supersets;
  }

  int perSuperset() {
    return perSuperset;
  }

  int size() {
    return places.size();
  }

  Place place(int index) {
    return places.get(index);
  }

  /** The contents of a superset by position. */
  Candidate[] contents(int superset) {
    Candidate[] contents = new Candidate[perSuperset];
    for (int position = 0; position < perSuperset; position++) {
      contents[position] = places.get(superset * perSuperset + position).getCandidate();
    }
    return contents;
  }

  /** Whether no place of these supersets is pinned. */
  boolean isFree(int firstSuperset, int lastSuperset) {
    for (int index = firstSuperset * perSuperset;
        index < (lastSuperset + 1) * perSuperset;
        index++) {
      if (places.get(index).isPinned()) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether an exercise or a variant of it stands outside some supersets, or in another place of
   * one superset.
   */
  boolean hasRoot(int root, int firstSuperset, int lastSuperset, int place) {
    for (int index = 0; index < places.size(); index++) {
      boolean within =
          index >= firstSuperset * perSuperset && index < (lastSuperset + 1) * perSuperset;
      boolean counts = place < 0 ? !within : index != place;
      Candidate candidate = places.get(index).getCandidate();
      if (counts && candidate != null && candidate.root() == root) {
        return true;
      }
    }
    return false;
  }

  /** Whether a place holds an exercise that shares its superset with others. */
  boolean isSingle(Place place) {
    return place.getCandidate() != null && !place.getCandidate().unilateral();
  }

  /** A move that gives neighbouring supersets new contents. */
  FillMove fill(int firstSuperset, Candidate[]... contents) {
    Place[] filled = new Place[contents.length * perSuperset];
    Candidate[] candidates = new Candidate[filled.length];
    for (int i = 0; i < filled.length; i++) {
      filled[i] = places.get(firstSuperset * perSuperset + i);
      candidates[i] = contents[i / perSuperset][i % perSuperset];
    }
    return new FillMove(filled, candidates);
  }
}

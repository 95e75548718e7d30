package counterset.score;

/**
 * A change of a session while it is being made: some places, in ascending order, and what each of
 * them is to hold. Reused from try to try, since a search makes hundreds of thousands.
 */
public final class Change {

  private final int[] places;
  private final Candidate[] candidates;
  private int size;
  private boolean reorder;

  /**
   * No change yet.
   *
   * @param places how many the session has
   */
  public Change(int places) {
    this.places = new int[places];
    this.candidates = new Candidate[places];
  }

  /**
   * Forgets everything.
   *
   * @param onlyReorders whether what comes next keeps the exercises of the session, for a faster
   *     score
   */
  public void clear(boolean onlyReorders) {
    size = 0;
    reorder = onlyReorders;
  }

  /**
   * Notes whether the session keeps its exercises, and each as often as before; if that is not
   * plain, it counts as if it does not.
   *
   * @param session what stands in the places before the change
   * @param balance one number a candidate, all 0, and 0 again afterwards
   */
  public void recognize(Candidate[] session, int perSuperset, int[] balance) {
    reorder = true;
    for (int i = 0; i < size && reorder; i++) {
      reorder =
          isWhole(candidates, i, i, perSuperset) && isWhole(session, places[i], i, perSuperset);
    }
    if (reorder) {
      for (int i = 0; i < size; i++) {
        balance[candidates[i].index()]++;
        balance[session[places[i]].index()]--;
      }
      for (int i = 0; i < size; i++) {
        reorder &= balance[candidates[i].index()] == 0 && balance[session[places[i]].index()] == 0;
      }
      for (int i = 0; i < size; i++) {
        balance[candidates[i].index()] = 0;
        balance[session[places[i]].index()] = 0;
      }
    }
  }

  /** Whether an exercise is there, and with both sides if it is one-sided. */
  private boolean isWhole(Candidate[] where, int index, int i, int perSuperset) {
    Candidate exercise = where[index];
    if (exercise == null || !exercise.unilateral()) {
      return exercise != null;
    }
    boolean first = places[i] % 2 == 0;
    int other = first ? i + 1 : i - 1;
    return perSuperset == 2
        && other >= 0
        && other < size
        && places[other] == places[i] + (first ? 1 : -1)
        && where[first ? index + 1 : index - 1] == exercise;
  }

  /** Whether the session keeps its exercises. */
  public boolean isReorder() {
    return reorder;
  }

  /**
   * Adds a place, which must not be there yet.
   *
   * @param candidate what it is to hold; null empties it
   */
  public void put(int place, Candidate candidate) {
    int i = size++;
    for (; i > 0 && places[i - 1] > place; i--) {
      places[i] = places[i - 1];
      candidates[i] = candidates[i - 1];
    }
    places[i] = place;
    candidates[i] = candidate;
  }

  /** How many places it changes. */
  public int size() {
    return size;
  }

  /** The index of the i-th place, ascending. */
  public int place(int i) {
    return places[i];
  }

  /** What the i-th place is to hold; once the change is made, what it held before. */
  public Candidate candidate(int i) {
    return candidates[i];
  }

  /** Makes the change, and remembers instead what stood there: a second exchange undoes it. */
  public void exchange(Candidate[] byPlace) {
    for (int i = 0; i < size; i++) {
      Candidate old = byPlace[places[i]];
      byPlace[places[i]] = candidates[i];
      candidates[i] = old;
    }
  }
}

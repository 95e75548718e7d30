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

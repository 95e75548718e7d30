package counterset.bound;

/**
 * Something that ties distant places of a session together and is priced instead of enforced.
 *
 * <p>It owns some multipliers, a run of a shared array. With them it prices the steps of a path,
 * and it has a copy of its own of what it counts, for which it chooses the best.
 */
interface Term {

  /** How many multipliers it has. */
  int size();

  /**
   * Adds to the prices of a path what its multipliers say.
   *
   * @param y scaled multipliers, its own from {@code at}
   */
  void price(int[] y, int at, Prices prices);

  /**
   * The best that its copy can be.
   *
   * @param slope where to add how the result grows with each multiplier
   * @return in scaled points
   */
  long copy(int[] y, int at, double[] slope);

  /** Adds to the slope how the points of a path grow with each multiplier. */
  void slope(Tour tour, int at, double[] slope);

  /** Puts multipliers, unscaled, where they are valid. */
  void project(double[] y, int at);
}

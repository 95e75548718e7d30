package counterset.solve;

import counterset.model.Identified;

/** How hard the solver tries. */
public enum Effort implements Identified {
  QUICK("quick", 2, 500),
  STANDARD("standard", 4, 1_000),
  THOROUGH("thorough", 8, 12_000);

  /** Short sessions are searched as if they had so many. */
  private static final int FEWEST_SUPERSETS = 4;

  private final String id;
  private final int starts;
  private final long movesPerSuperset;

  Effort(String id, int starts, long movesPerSuperset) {
    this.id = id;
    this.starts = starts;
    this.movesPerSuperset = movesPerSuperset;
  }

  @Override
  public String id() {
    return id;
  }

  /** How many searches start from seeds of their own, at least 1. */
  public int starts() {
    return starts;
  }

  /**
   * How many moves each search tries, those that are hopeless at first sight not counted. Longer
   * sessions take more: there is more to decide.
   *
   * @param supersets of the session
   */
  public long moves(int supersets) {
    return movesPerSuperset * Math.max(FEWEST_SUPERSETS, supersets);
  }
}

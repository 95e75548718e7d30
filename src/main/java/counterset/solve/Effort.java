package counterset.solve;

import counterset.model.Identified;

/** How hard the solver tries. */
public enum Effort implements Identified {
  QUICK("quick", 2, 4_000),
  STANDARD("standard", 4, 12_000),
  THOROUGH("thorough", 8, 100_000);

  private final String id;
  private final int starts;
  private final long moves;

  Effort(String id, int starts, long moves) {
    this.id = id;
    this.starts = starts;
    this.moves = moves;
  }

  @Override
  public String id() {
    return id;
  }

  /** How many searches start from seeds of their own, at least 1. */
  public int starts() {
    return starts;
  }

  /** How many moves each search tries; those that are hopeless at first sight do not count. */
  public long moves() {
    return moves;
  }
}

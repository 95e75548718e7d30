package counterset.solve;

import counterset.model.Identified;
import counterset.planning.moves.SessionMoves;

/** How hard the solver tries. */
public enum Effort implements Identified {
  QUICK("quick", 2, 1, 16),
  STANDARD("standard", 4, 2, 40),
  THOROUGH("thorough", 8, 12, 160);

  private final String id;
  private final int starts;
  private final int walks;
  private final int width;

  Effort(String id, int starts, int walks, int width) {
    this.id = id;
    this.starts = starts;
    this.walks = walks;
    this.width = width;
  }

  @Override
  public String id() {
    return id;
  }

  /** How many searches start from seeds of their own, at least 1. */
  public int starts() {
    return starts;
  }

  /** How many walks each search makes, at least 1. */
  public int walks() {
    return walks;
  }

  /** How many sessions of each number of changes are gone on from, at least 1. */
  int width() {
    return width;
  }

  /**
   * How many changes are tried in all.
   *
   * @param supersets of the session
   */
  public long tries(int supersets) {
    return (long) starts * SessionMoves.tries(walks, supersets);
  }
}

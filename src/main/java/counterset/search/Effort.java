package counterset.search;

import counterset.model.Identified;

/**
 * How hard the solver tries, in its own moves, so that the machine makes no difference.
 *
 * <p>Many short searches were measured against few long ones: they find more in the same number of
 * moves.
 */
public enum Effort implements Identified {
  QUICK("quick", 3, 40_000, 16),
  STANDARD("standard", 8, 70_000, 40),
  THOROUGH("thorough", 16, 280_000, 160);

  /** The supersets of a session of 20 minutes, for which the moves are. */
  private static final int USUAL_SUPERSETS = 8;

  private final String id;
  private final int starts;
  private final int moves;
  private final int width;

  Effort(String id, int starts, int moves, int width) {
    this.id = id;
    this.starts = starts;
    this.moves = moves;
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

  /**
   * How many moves each search makes. Longer sessions take more, since there is more to decide, but
   * not in proportion, since nobody waits six times as long for an hour as for ten minutes.
   *
   * @param supersets of all sessions together
   */
  public long moves(int supersets) {
    return moves / 2 + (long) moves * Math.max(USUAL_SUPERSETS, supersets) / (2 * USUAL_SUPERSETS);
  }

  /** How many sessions of each number of changes are gone on from, at least 1. */
  int width() {
    return width;
  }
}

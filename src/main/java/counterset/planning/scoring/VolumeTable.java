package counterset.planning.scoring;

import counterset.planning.Shares;

/** {@link Shares#squaredDistance}, looked up: a division for each target and try would be slow. */
final class VolumeTable {

  // Larger numbers are worked out each time.
  private static final int MOST_HALF_SETS = 64;
  private static final int MOST_IN_ALL = 512;

  private final int[] emphasis;
  private final int emphasisSum;
  private final int[][] away;

  VolumeTable(int[] emphasis, int emphasisSum) {
    this.emphasis = emphasis;
    this.emphasisSum = emphasisSum;
    this.away = new int[emphasis.length][];
  }

  /** How far a target with so many of all half sets is from its share, in sets squared. */
  int away(int target, int halfSets, int all) {
    if (halfSets >= MOST_HALF_SETS || all >= MOST_IN_ALL) {
      return Shares.squaredDistance(halfSets, all, emphasis[target], emphasisSum);
    }
    int[] row = row(target);
    int cell = all * MOST_HALF_SETS + halfSets;
    if (row[cell] == 0) {
      row[cell] = 1 + Shares.squaredDistance(halfSets, all, emphasis[target], emphasisSum);
    }
    return row[cell] - 1;
  }

  /** Targets of equal emphasis share a table. */
  private int[] row(int target) {
    if (away[target] == null) {
      for (int other = 0; other < emphasis.length; other++) {
        if (emphasis[other] == emphasis[target] && away[other] != null) {
          away[target] = away[other];
          return away[target];
        }
      }
      away[target] = new int[MOST_HALF_SETS * MOST_IN_ALL];
    }
    return away[target];
  }
}

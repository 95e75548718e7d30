package counterset.bound;

/**
 * Every target gets its share of the sets. The multipliers price the half sets of each target, and
 * those of all targets together.
 *
 * <p>The distances are looked up, rounding included, so the copy is exact for any whole numbers.
 */
final class Volume implements Term {

  private final Counts halfSets;
  private final int[] emphasis;
  private final int allEmphasis;
  private final int targets;
  private final int mostOfOne;
  private final int mostOfAll;

  /** By target, all half sets of the session in one round, and the target's. */
  private final int[][][] cost;

  /**
   * A term.
   *
   * @param emphasis by target
   * @param units what a target with so many of all half sets costs
   * @param weight scaled points of a unit
   * @param mostOfOne half sets of one target in one round
   * @param mostOfAll half sets of all targets in one round
   */
  Volume(Counts halfSets, int[] emphasis, Units units, int weight, int mostOfOne, int mostOfAll) {
    this.halfSets = halfSets;
    this.targets = emphasis.length;
    this.mostOfOne = mostOfOne;
    this.mostOfAll = mostOfAll;
    this.emphasis = emphasis;
    int sum = 0;
    for (int each : emphasis) {
      sum += each;
    }
    this.allEmphasis = sum;
    cost = new int[targets][mostOfAll + 1][];
    for (int target = 0; target < targets; target++) {
      for (int all = 0; all <= mostOfAll; all++) {
        int[] row = new int[Math.min(mostOfOne, all) + 1];
        for (int own = 0; own < row.length; own++) {
          row[own] = weight * units.of(target, own, all);
        }
        cost[target][all] = row;
      }
    }
  }

  /** Units of a target by its half sets and those of all, in one round. */
  interface Units {
    int of(int target, int own, int all);
  }

  @Override
  public int size() {
    return targets + 1;
  }

  @Override
  public void price(int[] y, int at, Prices prices) {
    int[] each = new int[targets];
    for (int target = 0; target < targets; target++) {
      each[target] = y[at + target] + y[at + targets];
    }
    halfSets.price(each, 0, 1, prices.once);
  }

  @Override
  public long copy(int[] y, int at, double[] slope) {
    long best = Long.MIN_VALUE;
    int bestAll = 0;
    for (int all = 0; all <= mostOfAll; all++) {
      long sum = -(long) y[at + targets] * all;
      for (int target = 0; target < targets; target++) {
        sum += best(cost[target][all], share(target, all), y[at + target]);
      }
      if (sum > best) {
        best = sum;
        bestAll = all;
      }
    }
    for (int target = 0; target < targets; target++) {
      int share = share(target, bestAll);
      slope[at + target] -= argBest(cost[target][bestAll], share, y[at + target]);
    }
    slope[at + targets] -= bestAll;
    return best;
  }

  /** The half sets closest to a target's share, or next to it. */
  private int share(int target, int all) {
    return Math.min(cost[target][all].length - 1, emphasis[target] * all / allEmphasis);
  }

  private static long best(int[] cost, int share, int price) {
    int own = argBest(cost, share, price);
    return -(long) price * own - cost[own];
  }

  /** Costs grow away from the share, so the search can end where they outweigh any price. */
  private static int argBest(int[] cost, int share, int price) {
    int best = share;
    int worth = -price * share - cost[share];
    int reward = Math.max(0, -price);
    int most = reward * (cost.length - 1);
    for (int own = share + 1; own < cost.length && most - cost[own] > worth; own++) {
      if (-price * own - cost[own] > worth) {
        best = own;
        worth = -price * own - cost[own];
      }
    }
    for (int own = share - 1; own >= 0 && reward * own - cost[own] > worth; own--) {
      if (-price * own - cost[own] > worth) {
        best = own;
        worth = -price * own - cost[own];
      }
    }
    return best;
  }

  @Override
  public void slope(Tour tour, int at, double[] slope) {
    halfSets.slope(tour, at, 1, slope);
    double all = 0;
    double[] each = new double[targets];
    halfSets.slope(tour, 0, 1, each);
    for (double half : each) {
      all += half;
    }
    slope[at + targets] += all;
  }

  @Override
  public void project(double[] y, int at) {
    // Any price is valid: too few sets cost as much as too many.
  }
}

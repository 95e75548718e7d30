package counterset.bound;

/**
 * What the session exists for: sets of targets, items to be used, exercises asked for, full
 * supersets. All that is missing of it together costs no more than a budget of medium points.
 *
 * @param counts what each exercise brings of each wish
 * @param wanted by wish, how much of it
 * @param weight by wish, medium points for each that is missing, at least 1
 * @param budget the medium points that may be missing, at least 0
 * @param hole medium points of a superset with a hole; 0 if a hole costs none or there can be none
 */
record Wishes(Counts counts, int[] wanted, int[] weight, long budget, int hole) implements Term {

  @Override
  public int size() {
    return counts.things();
  }

  @Override
  public void price(int[] y, int at, Prices prices) {
    counts.price(y, at, 1, prices.once);
    prices.hole = Math.toIntExact(Math.min(1 << 20, (long) hole * perPoint(y, at)));
  }

  @Override
  public long copy(int[] y, int at, double[] slope) {
    long sum = 0;
    int dearest = -1;
    for (int i = at; i < at + size(); i++) {
      sum -= (long) y[i] * wanted[i - at];
      slope[i] -= wanted[i - at];
      if (mayMiss(i - at) && (dearest < 0 || perPoint(y, at, i) > perPoint(y, at, dearest))) {
        dearest = i;
      }
    }
    if (dearest >= 0) {
      sum += budget * perPoint(y, at, dearest);
      slope[dearest] += (double) budget / weight[dearest - at];
    }
    return sum;
  }

  /** The least price of a medium point that makes it no use to leave a wish unmet. */
  private int perPoint(int[] y, int at) {
    int price = 0;
    for (int i = at; i < at + size(); i++) {
      price = mayMiss(i - at) ? Math.max(price, perPoint(y, at, i)) : price;
    }
    return price;
  }

  private int perPoint(int[] y, int at, int i) {
    return (y[i] + weight[i - at] - 1) / weight[i - at];
  }

  /** Whether anything of a wish can be left unmet within the budget. */
  boolean mayMiss(int wish) {
    return weight[wish] <= budget;
  }

  @Override
  public void slope(Tour tour, int at, double[] slope) {
    counts.slope(tour, at, 1, slope);
  }

  @Override
  public void project(double[] y, int at) {
    for (int i = at; i < at + size(); i++) {
      y[i] = Math.max(0, y[i]);
    }
  }
}

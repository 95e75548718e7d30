package counterset.bound;

/**
 * How many supersets of a session are one-sided.
 *
 * @param oneSided points a superset away from the share
 * @param away by one-sided supersets, how many a session is away from the share
 */
record Handful(int oneSided, int[] away, int scale) implements Term {

  @Override
  public int size() {
    return 1;
  }

  @Override
  public void price(int[] y, int at, Prices prices) {
    prices.oneSided += y[at];
  }

  @Override
  public long copy(int[] y, int at, double[] slope) {
    int best = 0;
    for (int count = 1; count < away.length; count++) {
      best = worth(y[at], count) > worth(y[at], best) ? count : best;
    }
    slope[at] -= best;
    return worth(y[at], best);
  }

  private long worth(int price, int count) {
    long away = this.away[count];
    return -(long) price * count - away * oneSided * scale;
  }

  @Override
  public void slope(Tour tour, int at, double[] slope) {
    slope[at] += tour.oneSided;
  }

  @Override
  public void project(double[] y, int at) {
    y[at] = Math.max(-oneSided, Math.min(oneSided, y[at]));
  }
}

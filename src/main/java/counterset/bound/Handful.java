package counterset.bound;

/**
 * What a session counts as a whole: how light it is, how often one goes down or up, and how many
 * supersets are one-sided; a multiplier each.
 *
 * @param lightness by candidate, steps of intensity short of moderate, a place
 * @param light points a step, unscaled; 0 to leave it out, as the others
 * @param trip points a floor trip after the first
 * @param oneSided points a superset away from the share
 * @param away by one-sided supersets, how many a session is away from the share
 */
record Handful(int[] lightness, int light, int trip, int oneSided, int[] away, int scale)
    implements Term {

  @Override
  public int size() {
    return 3;
  }

  @Override
  public void price(int[] y, int at, Prices prices) {
    for (int candidate = 0; candidate < lightness.length; candidate++) {
      prices.place[candidate] -= y[at] * lightness[candidate];
    }
    prices.trip = y[at + 1];
    prices.oneSided += y[at + 2];
  }

  @Override
  public long copy(int[] y, int at, double[] slope) {
    slope[at + 1] += 1;
    int best = 0;
    for (int count = 1; count < away.length; count++) {
      best = worth(y[at + 2], count) > worth(y[at + 2], best) ? count : best;
    }
    slope[at + 2] -= best;
    return y[at + 1] + worth(y[at + 2], best);
  }

  private long worth(int price, int count) {
    long away = this.away[count];
    return -(long) price * count - away * oneSided * scale;
  }

  @Override
  public void slope(Tour tour, int at, double[] slope) {
    for (int candidate = 0; candidate < lightness.length; candidate++) {
      slope[at] -= lightness[candidate] * tour.placed[candidate];
    }
    slope[at + 1] -= tour.trips;
    slope[at + 2] += tour.oneSided;
  }

  @Override
  public void project(double[] y, int at) {
    y[at] = Math.max(0, Math.min(light, y[at]));
    y[at + 1] = Math.max(0, Math.min(trip, y[at + 1]));
    y[at + 2] = Math.max(-oneSided, Math.min(oneSided, y[at + 2]));
  }
}

package counterset.bound;

/** Each exercise, its variants included, at most once. */
record Once(Counts roots) implements Term {

  @Override
  public int size() {
    return roots.things();
  }

  @Override
  public void price(int[] y, int at, Prices prices) {
    roots.price(y, at, -1, prices.once);
  }

  @Override
  public long copy(int[] y, int at, double[] slope) {
    long sum = 0;
    for (int i = at; i < at + size(); i++) {
      sum += y[i];
      slope[i] += 1;
    }
    return sum;
  }

  @Override
  public void slope(Tour tour, int at, double[] slope) {
    roots.slope(tour, at, -1, slope);
  }

  @Override
  public void project(double[] y, int at) {
    for (int i = at; i < at + size(); i++) {
      y[i] = Math.max(0, y[i]);
    }
  }
}

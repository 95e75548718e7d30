package counterset.bound;

/**
 * Each pair of exercises of one family costs.
 *
 * @param weight scaled points a pair
 * @param most exercises in a session
 */
record Families(Counts families, int weight, int most) implements Term {

  @Override
  public int size() {
    return families.things();
  }

  @Override
  public void price(int[] y, int at, Prices prices) {
    families.price(y, at, -1, prices.once);
  }

  @Override
  public long copy(int[] y, int at, double[] slope) {
    long sum = 0;
    for (int i = at; i < at + size(); i++) {
      int members = members(y[i]);
      sum += worth(y[i], members);
      slope[i] += members;
    }
    return sum;
  }

  /** How many exercises of a family are best at a price each, which another of them must earn. */
  int members(int price) {
    int members = 0;
    while (members < most && price > (long) weight * members) {
      members++;
    }
    return members;
  }

  /** What so many exercises of a family at a price each are worth. */
  long worth(int price, int members) {
    return (long) price * members - (long) weight * members * (members - 1) / 2;
  }

  @Override
  public void slope(Tour tour, int at, double[] slope) {
    families.slope(tour, at, -1, slope);
  }

  @Override
  public void project(double[] y, int at) {
    for (int i = at; i < at + size(); i++) {
      y[i] = Math.max(0, y[i]);
    }
  }
}

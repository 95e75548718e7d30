package counterset.bound;

import counterset.bound.Arcs.Stage;

/**
 * Walks back along the longest path that {@link Paths} has found, and counts what it consists of.
 */
final class Trace {

  private static final int UNREACHED = Arcs.NEVER / 2;

  private final Network network;
  private final int[] meets;
  private final Prices prices;
  private final int[][][] before;
  private final int[][][][][] inside;
  private final Tour tour;
  private int mode;
  private int node;
  private int group;
  private int value;

  Trace(Network network, int[] meets, Prices prices, int[][][] before, int[][][][][] inside) {
    this.network = network;
    this.meets = meets;
    this.prices = prices;
    this.before = before;
    this.inside = inside;
    this.tour = new Tour(prices.once.length);
  }

  Tour tour() {
    int[][] end = before[network.supersets];
    value = Integer.MIN_VALUE;
    for (int l = end.length - Paths.LEVELS; l < end.length; l++) {
      for (int n = 0; n < end[l].length; n++) {
        if (end[l][n] > value) {
          value = end[l][n];
          mode = l;
          node = n;
        }
      }
    }
    for (int superset = network.supersets - 1; superset >= 0; superset--) {
      superset(superset);
    }
    return tour;
  }

  private void superset(int superset) {
    int place = lastPlace(superset);
    for (; place > 0; place--) {
      inside(superset, place);
    }
    if (place == 0) {
      across(superset);
    }
  }

  /** The last place of a superset that the path fills, -1 if it fills none. */
  private int lastPlace(int superset) {
    int last = network.perSuperset - 1;
    group = 0;
    if (inside[superset][last][0][mode][node] == value) {
      return last;
    }
    tour.holes++;
    value += prices.hole;
    for (int place = 0; place < last && network.mayStandAlone(node); place++) {
      for (group = 0; group < inside[superset][place].length; group++) {
        if (inside[superset][place][group][mode][node] == value) {
          return place;
        }
      }
    }
    return -1;
  }

  private void inside(int superset, int place) {
    int[][][] from = inside[superset][place - 1];
    int candidate = network.candidate[node];
    tour.placed[candidate]++;
    if (network.perSuperset == 2 && network.unilateral[node]) {
      int side = network.bothSides + prices.oneSided + prices.place[candidate];
      if (from[0][mode][node] > UNREACHED && from[0][mode][node] + side == value) {
        tour.oneSided++;
        value -= side;
        return;
      }
    }
    for (Stage stage : network.stages[place - 1]) {
      if (stage.to() == group
          && back(from[stage.from()], stage.points(), network.tripsInside, true)) {
        group = stage.from();
        return;
      }
    }
    throw new IllegalStateException("A path leads to a place (" + place + ") from nowhere.");
  }

  private void across(int superset) {
    tour.placed[network.candidate[node]]++;
    if (!back(before[superset], network.rest, 1, false)) {
      throw new IllegalStateException("A path leads to a superset from nowhere.");
    }
  }

  private boolean back(int[][] from, int[][] points, int trips, boolean later) {
    int candidate = network.candidate[node];
    int step = network.intensity[node] - 1;
    for (int l = 0; l < from.length; l++) {
      int level = l % Paths.LEVELS;
      int met = l / Paths.LEVELS | meets[node];
      if (met * Paths.LEVELS + Math.min(level, step) != mode) {
        continue;
      }
      int heavier = Math.max(0, network.charged[node] - 1 - level);
      int once = prices.once[candidate] - heavier * network.order;
      boolean counts = !(later && network.mayBeSecondSide[node] && once < 0);
      int own = (counts ? once : 0) + prices.place[candidate];
      for (int n = 0; n < from[l].length; n++) {
        boolean trip = n > 0 && network.floor[n] != network.floor[node];
        int cost = trip ? trips * prices.trip : 0;
        if (from[l][n] > UNREACHED && from[l][n] + points[n][node] - cost + own == value) {
          tour.done[candidate] += counts ? 1 : 0;
          tour.trips += trip ? trips : 0;
          value = from[l][n];
          mode = l;
          node = n;
          return true;
        }
      }
    }
    return false;
  }
}

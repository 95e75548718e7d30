package counterset.bound;

import counterset.bound.Arcs.Stage;
import java.util.Arrays;

/**
 * Lists the arcs that a path of enough points can use, after {@link Paths} has found the longest:
 * it walks from the end and adds the longest way there to the longest way from the start.
 */
final class Sieve {

  private static final int UNREACHED = Arcs.NEVER / 2;

  private final Network network;
  private final Paths paths;
  private final Prices prices;
  private final long least;
  private final int most;
  private final Tags tags;
  private final int nodes;
  private final int last;
  private final int modes;
  private final int end;

  /** By state, the most points from there to the end. */
  private final int[] after;

  /** The arcs and where they lead, the last of the session first. */
  private final ArcList arcs = new ArcList();

  private int[] to = new int[1 << 12];

  /**
   * For paths that have been walked at some prices.
   *
   * @param least scaled points of a path that matters
   * @param most arcs at most
   */
  Sieve(Network network, Paths paths, Prices prices, long least, int most) {
    this.network = network;
    this.paths = paths;
    this.prices = prices;
    this.least = least;
    this.most = most;
    this.tags = new Tags(prices.once.length, network.tripsInside);
    this.nodes = network.nodes.size();
    this.last = network.perSuperset - 1;
    this.modes = paths.modes;
    this.end = state(network.supersets, 0, 0, 0, 0);
    this.after = new int[end + 1];
    Arrays.fill(after, Arcs.NEVER);
  }

  /** The arcs that are left, or null if there are too many, or none since no superset fits. */
  Diagram diagram() {
    if (network.supersets == 0) {
      return null;
    }
    after[end] = 0;
    int[][] reached = paths.before[network.supersets];
    for (int mode = modes - Paths.LEVELS; mode < modes; mode++) {
      for (int node = 0; node < nodes; node++) {
        int start = state(network.supersets - 1, last, 0, mode, node);
        add(reached[mode][node], start, 0, 0, tags.nothing(), end);
      }
    }
    for (int superset = network.supersets - 1; superset >= 0; superset--) {
      for (int place = last; place >= 0; place--) {
        place(superset, place);
        if (arcs.size > most) {
          return null;
        }
      }
    }
    return turned();
  }

  private void place(int superset, int place) {
    int[][][] here = paths.inside[superset][place];
    for (int group = 0; group < here.length; group++) {
      int[][] reached = place == last ? paths.before[superset + 1] : here[group];
      for (int mode = 0; mode < modes && arcs.size <= most; mode++) {
        for (int node = 0; node < nodes; node++) {
          int state = state(superset, place, group, mode, node);
          if (reached[mode][node] > UNREACHED
              && reached[mode][node] + (long) after[state] >= least) {
            into(superset, place, group, mode, node, state);
          }
        }
      }
    }
  }

  private void into(int superset, int place, int group, int mode, int node, int state) {
    if (place == last && network.holes) {
      hole(superset, mode, node, state);
    }
    if (node == 0 || !network.allowed(superset, place)[node]) {
      return;
    }
    if (place == 0) {
      int[][] reached = paths.before[superset];
      for (int m = 0; m < modes; m++) {
        int start = superset == 0 ? 0 : state(superset - 1, last, 0, m, 0);
        from(reached[m], network.rest, start, m, mode, node, state, 1);
      }
      return;
    }
    int[][][] reached = paths.inside[superset][place - 1];
    for (Stage stage : network.stages[place - 1]) {
      for (int m = 0; m < modes && stage.to() == group; m++) {
        int start = state(superset, place - 1, stage.from(), m, 0);
        int[] from = reached[stage.from()][m];
        from(from, stage.points(), start, m, mode, node, state, network.tripsInside);
      }
    }
    if (network.perSuperset == 2 && network.unilateral[node]) {
      int candidate = network.candidate[node];
      int worth = prices.oneSided + prices.place[candidate];
      int tag = tags.of(candidate, Tags.OTHER_SIDE);
      int start = state(superset, 0, 0, mode, node);
      add(reached[0][mode][node], start, network.bothSides, worth, tag, state);
    }
  }

  private void from(
      int[] reached, int[][] points, int start, int m, int mode, int node, int state, int trips) {
    int step = network.intensity[node] - 1;
    int level = m % Paths.LEVELS;
    int met = m / Paths.LEVELS | paths.meets[node];
    if (met * Paths.LEVELS + Math.min(level, step) != mode) {
      return;
    }
    int heavier = Math.max(0, network.charged[node] - 1 - level) * network.order;
    boolean across = points == network.rest;
    int candidate = network.candidate[node];
    int place = prices.place[candidate];
    int once = place + prices.once[candidate];
    int withTrip = across ? Tags.ONCE_AFTER_TRIP : Tags.ONCE_WITH_TRIPS;
    for (int n = 0; n < nodes; n++) {
      int own = points[n][node];
      if (reached[n] > UNREACHED && own > UNREACHED) {
        boolean trip = n > 0 && network.floor[n] != network.floor[node];
        int cost = trip ? trips * prices.trip : 0;
        int tag = tags.of(candidate, trip ? withTrip : Tags.ONCE);
        add(reached[n], start + n, own - heavier, once - cost, tag, state);
        if (!across && network.mayBeSecondSide[node]) {
          int again = tags.of(candidate, trip ? Tags.AGAIN_WITH_TRIPS : Tags.AGAIN);
          add(reached[n], start + n, own, place - cost, again, state);
        }
      }
    }
  }

  private void hole(int superset, int mode, int node, int state) {
    if (superset > 0 || node == 0) {
      int start = superset == 0 ? 0 : state(superset - 1, last, 0, mode, node);
      add(paths.before[superset][mode][node], start, 0, -prices.hole, tags.hole(), state);
    }
    for (int place = 0; place < last && network.mayStandAlone(node); place++) {
      int[][][] here = paths.inside[superset][place];
      for (int group = 0; group < here.length; group++) {
        int start = state(superset, place, group, mode, node);
        add(here[group][mode][node], start, 0, -prices.hole, tags.hole(), state);
      }
    }
  }

  /** A state; 0 is the start of the session. */
  private int state(int superset, int place, int group, int mode, int node) {
    int before = (superset * network.perSuperset + place) * network.classes + group;
    return 1 + (before * modes + mode) * nodes + node;
  }

  private void add(int reached, int start, int points, int worth, int tag, int state) {
    int value = after[state] + points + worth;
    if (reached > UNREACHED && value > UNREACHED && (long) reached + value >= least) {
      after[start] = Math.max(after[start], value);
      if (arcs.size == to.length) {
        to = Arrays.copyOf(to, 2 * to.length);
      }
      to[arcs.size] = state;
      arcs.add(start, points, tag);
    }
  }

  /** The arcs from first to last. */
  private Diagram turned() {
    int[] number = new int[end + 1];
    ArcList turned = new ArcList();
    turned.state();
    for (int i = arcs.size - 1; i >= 0; i--) {
      turned.add(number[arcs.from[i]], arcs.points[i], arcs.tag[i]);
      if (i == 0 || to[i - 1] != to[i]) {
        number[to[i]] = turned.state();
      }
    }
    return new Diagram(tags, turned);
  }
}

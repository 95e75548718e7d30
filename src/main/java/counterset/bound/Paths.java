package counterset.bound;

import static counterset.bound.Arcs.NEVER;

import java.util.Arrays;

/**
 * The longest path through the places of a session.
 *
 * <p>A state is a node, the lightest intensity so far, which of some remembered wishes are met and,
 * inside a superset of three, the weakest link so far. A later exercise that is heavier than the
 * lightest so far costs the steps between them, which is at most what the pairs of the session
 * cost.
 */
final class Paths implements Longest {

  static final int LEVELS = 3;

  /** Below this, a state cannot be reached. */
  private static final int UNREACHED = NEVER / 2;

  private final Network network;
  final int[] meets;
  final int modes;
  private final int nodes;
  private final int classes;
  private final int last;

  /** By superset; the states before it. */
  final int[][][] before;

  /** By superset, place in it, class, level and node. */
  final int[][][][][] inside;

  private final int[] fromFloor;
  private final int[] fromStanding;

  /**
   * Lays out the states.
   *
   * @param meets by node, the remembered wishes that it meets, as bits
   * @param wishes how many are remembered; a path must meet them all
   */
  Paths(Network network, int[] meets, int wishes) {
    this.network = network;
    this.meets = meets;
    this.modes = LEVELS << wishes;
    this.nodes = network.nodes.size();
    this.classes = network.classes;
    this.last = network.perSuperset - 1;
    before = new int[network.supersets + 1][modes][nodes];
    inside = new int[network.supersets][network.perSuperset][][][];
    for (int[][][][] superset : inside) {
      for (int place = 0; place <= last; place++) {
        superset[place] = new int[place > 0 && place < last ? classes : 1][modes][nodes];
      }
    }
    fromFloor = new int[nodes];
    fromStanding = new int[nodes];
  }

  @Override
  public int longest(Prices prices) {
    fill(before[0]);
    before[0][LEVELS - 1][0] = 0;
    for (int superset = 0; superset < network.supersets; superset++) {
      int[][][][] here = inside[superset];
      for (int[][][] place : here) {
        for (int[][] states : place) {
          fill(states);
        }
      }
      boolean[] allowed = network.allowed(superset, 0);
      step(before[superset], network.rest, prices.trip, prices, here[0][0], allowed, false);
      for (int place = 0; place < last; place++) {
        allowed = network.allowed(superset, place + 1);
        int trip = network.tripsInside * prices.trip;
        for (Arcs.Stage stage : network.stages[place]) {
          int[][] to = here[place + 1][stage.to()];
          step(here[place][stage.from()], stage.points(), trip, prices, to, allowed, true);
        }
      }
      bothSides(superset, prices);
      holes(superset, prices);
    }
    int longest = NEVER;
    for (int mode = modes - LEVELS; mode < modes; mode++) {
      for (int value : before[network.supersets][mode]) {
        longest = Math.max(longest, value);
      }
    }
    return longest;
  }

  private static void fill(int[][] states) {
    for (int[] level : states) {
      Arrays.fill(level, NEVER);
    }
  }

  private void step(
      int[][] from,
      int[][] points,
      int trip,
      Prices prices,
      int[][] to,
      boolean[] allowed,
      boolean later) {
    for (int mode = 0; mode < modes; mode++) {
      if (push(from[mode], points)) {
        int level = mode % LEVELS;
        int met = mode / LEVELS;
        for (int node = 1; node < nodes; node++) {
          boolean floor = network.floor[node];
          int same = floor ? fromFloor[node] : fromStanding[node];
          int other = floor ? fromStanding[node] : fromFloor[node];
          int value = Math.max(same, other - trip);
          if (value > UNREACHED && allowed[node]) {
            value += own(node, level, prices, later);
            int then = (met | meets[node]) * LEVELS + Math.min(level, network.intensity[node] - 1);
            to[then][node] = Math.max(to[then][node], value);
          }
        }
      }
    }
  }

  /** What a node earns where the lightest so far has a level. */
  private int own(int node, int level, Prices prices, boolean later) {
    int candidate = network.candidate[node];
    int heavier = Math.max(0, network.charged[node] - 1 - level);
    int once = prices.once[candidate] - heavier * network.order;
    if (later && network.mayBeSecondSide[node]) {
      once = Math.max(0, once);
    }
    return once + prices.place[candidate];
  }

  private boolean push(int[] from, int[][] points) {
    boolean any = false;
    for (int node = 0; node < nodes; node++) {
      int value = from[node];
      if (value > UNREACHED) {
        if (!any) {
          any = true;
          Arrays.fill(fromFloor, NEVER);
          Arrays.fill(fromStanding, NEVER);
        }
        if (node == 0 || network.floor[node]) {
          raise(fromFloor, value, points[node]);
        }
        if (node == 0 || !network.floor[node]) {
          raise(fromStanding, value, points[node]);
        }
      }
    }
    return any;
  }

  private static void raise(int[] to, int value, int[] points) {
    for (int i = 0; i < to.length; i++) {
      to[i] = Math.max(to[i], value + points[i]);
    }
  }

  private void bothSides(int superset, Prices prices) {
    if (network.perSuperset != 2) {
      return;
    }
    boolean[] allowed = network.allowed(superset, 1);
    for (int mode = 0; mode < modes; mode++) {
      int[] from = inside[superset][0][0][mode];
      int[] to = inside[superset][1][0][mode];
      for (int node = 1; node < nodes; node++) {
        if (network.unilateral[node] && allowed[node] && from[node] > UNREACHED) {
          to[node] = Math.max(to[node], from[node] + secondSide(node, prices));
        }
      }
    }
  }

  private int secondSide(int node, Prices prices) {
    return network.bothSides + prices.oneSided + prices.place[network.candidate[node]];
  }

  private void holes(int superset, Prices prices) {
    for (int mode = 0; mode < modes; mode++) {
      int[] to = before[superset + 1][mode];
      System.arraycopy(inside[superset][last][0][mode], 0, to, 0, nodes);
      if (!network.holes) {
        continue;
      }
      for (int node = 0; node < nodes; node++) {
        int best = before[superset][mode][node];
        for (int place = 0; place < last; place++) {
          for (int[][] states : inside[superset][place]) {
            best = network.mayStandAlone(node) ? Math.max(best, states[mode][node]) : best;
          }
        }
        to[node] = Math.max(to[node], best > UNREACHED ? best - prices.hole : NEVER);
      }
    }
  }

  @Override
  public Tour tour(Prices prices) {
    return new Trace(network, meets, prices, before, inside).tour();
  }
}

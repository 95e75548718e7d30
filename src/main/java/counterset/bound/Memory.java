package counterset.bound;

import java.util.ArrayList;
import java.util.List;

/**
 * The wishes that each path must meet by itself. Without it, paths meet wishes on average only:
 * half of them with one kind of equipment, half with another, and none of them pays for the change.
 */
final class Memory {

  private static final int MOST = 6;

  /** Steps of one search for a path, about: what a wish more may cost. */
  private static final long WORK = 8_000_000;

  private static final double FADES = 0.95;

  private final Wishes wishes;
  private final int candidates;
  private final List<Integer> remembered = new ArrayList<>();

  /** By wish, how often the last paths met it, from 0 to 1. */
  private final double[] met;

  Memory(Wishes wishes, int candidates) {
    this.wishes = wishes;
    this.candidates = candidates;
    this.met = new double[wishes.size()];
  }

  int size() {
    return remembered.size();
  }

  /** Takes in which wishes a path meets. */
  void see(Tour tour) {
    for (int wish = 0; wish < met.length; wish++) {
      boolean here = false;
      for (int candidate = 0; candidate < candidates && !here; candidate++) {
        here = tour.done[candidate] > 0 && wishes.counts().has(candidate, wish);
      }
      met[wish] = FADES * met[wish] + (here ? 1 - FADES : 0);
    }
  }

  /** Remembers the wish that is met least often, of those that cannot be left unmet. */
  boolean grow(Network network) {
    long nodes = network.nodes.size();
    long work = nodes * nodes * network.supersets * network.perSuperset * network.classes;
    if (size() == MOST || work << size() + 1 > WORK) {
      return false;
    }
    int least = -1;
    for (int wish = 0; wish < met.length; wish++) {
      boolean must = wishes.wanted()[wish] > 0 && !wishes.mayMiss(wish);
      if (must && !remembered.contains(wish) && (least < 0 || met[wish] < met[least])) {
        least = wish;
      }
    }
    if (least >= 0) {
      remembered.add(least);
    }
    return least >= 0;
  }

  /** By node, the remembered wishes that it meets, as bits. */
  int[] meets(Network network) {
    int[] bits = new int[network.nodes.size()];
    for (int node = 1; node < bits.length; node++) {
      for (int i = 0; i < remembered.size(); i++) {
        boolean here = wishes.counts().has(network.candidate[node], remembered.get(i));
        bits[node] |= here ? 1 << i : 0;
      }
    }
    return bits;
  }
}

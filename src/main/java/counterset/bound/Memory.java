package counterset.bound;

import counterset.score.Candidate;
import java.util.ArrayList;
import java.util.List;

/**
 * What each path must keep to by itself: wishes to meet, exercises to do at most once. Without it,
 * paths keep to it on average only: half of them with one kind of equipment, half with another, and
 * none of them pays for the change.
 */
final class Memory {

  private static final int MOST = 6;

  /** Steps of one search for a path, about: what a wish more may cost. */
  private static final long WORK = 8_000_000;

  private static final double FADES = 0.95;
  private static final double SELDOM = 0.02;

  private final Wishes wishes;
  private final int[] root;
  private final boolean[] keptWish;
  private final boolean[] keptRoot;

  /** The wishes that {@link Paths} remember. */
  private final List<Integer> remembered = new ArrayList<>();

  /** By wish, how often the last paths did not meet it, from 0 to 1. */
  private final double[] unmet;

  /** By exercise, how often the last paths repeated it, from 0. */
  private final double[] again;

  /**
   * Remembers nothing yet.
   *
   * @param once whether exercises, their variants included, may come at most once
   */
  Memory(Wishes wishes, List<Candidate> candidates, boolean once) {
    this.wishes = wishes;
    root = candidates.stream().mapToInt(Candidate::root).toArray();
    keptWish = new boolean[wishes.size()];
    for (int wish = 0; wish < keptWish.length; wish++) {
      keptWish[wish] = wishes.wanted()[wish] == 0 || wishes.mayMiss(wish);
    }
    int roots = 0;
    for (int each : root) {
      roots = Math.max(roots, each + 1);
    }
    keptRoot = new boolean[once ? roots : 0];
    unmet = new double[keptWish.length];
    again = new double[roots];
  }

  /** Takes in what a path keeps to. */
  void see(Tour tour) {
    int[] times = new int[again.length];
    boolean[] met = new boolean[unmet.length];
    for (int candidate = 0; candidate < root.length; candidate++) {
      times[root[candidate]] += tour.done[candidate];
      for (int wish = 0; wish < met.length && tour.done[candidate] > 0; wish++) {
        met[wish] |= wishes.counts().has(candidate, wish);
      }
    }
    for (int wish = 0; wish < met.length; wish++) {
      unmet[wish] = FADES * unmet[wish] + (met[wish] ? 0 : 1 - FADES);
    }
    for (int i = 0; i < times.length; i++) {
      again[i] = FADES * again[i] + (1 - FADES) * Math.max(0, times[i] - 1);
    }
  }

  /** Paths that remember one more wish; the same if there is none or it is too much work. */
  Paths grow(Paths paths, Network network) {
    long nodes = network.nodes.size();
    long work = nodes * nodes * network.supersets * network.perSuperset * network.classes;
    int wish = most(unmet, keptWish);
    if (remembered.size() == MOST || work << remembered.size() + 1 > WORK || wish < 0) {
      return paths;
    }
    remembered.add(wish);
    keptWish[wish] = true;
    int[] bits = new int[network.nodes.size()];
    for (int node = 1; node < bits.length; node++) {
      for (int i = 0; i < remembered.size(); i++) {
        boolean here = wishes.counts().has(network.candidate[node], remembered.get(i));
        bits[node] |= here ? 1 << i : 0;
      }
    }
    return new Paths(network, bits, remembered.size());
  }

  /**
   * A diagram that keeps to what the last paths broke most often; null if there is nothing or it
   * has too many arcs. What it keeps to is remembered once {@link Grown#accept} is called.
   */
  Grown grow(Diagram diagram, int arcs) {
    int wish = most(unmet, keptWish);
    int exercise = most(again, keptRoot);
    double forWish = wish < 0 ? 0 : unmet[wish];
    double forExercise = exercise < 0 ? 0 : again[exercise];
    if (Math.max(forWish, forExercise) < SELDOM) {
      return null;
    }
    boolean isWish = forWish >= forExercise;
    boolean[] some = new boolean[diagram.tags.size()];
    for (int tag = 0; tag < some.length; tag++) {
      int done = diagram.tags.done(tag);
      some[tag] = done >= 0 && (isWish ? wishes.counts().has(done, wish) : root[done] == exercise);
    }
    Split split = isWish ? new AtLeastOnce(diagram, some) : new AtMostOnce(diagram, some);
    Diagram grown = split.apart(arcs);
    boolean[] kept = isWish ? keptWish : keptRoot;
    return grown == null ? null : new Grown(grown, () -> kept[isWish ? wish : exercise] = true);
  }

  private static int most(double[] broken, boolean[] kept) {
    int most = -1;
    for (int i = 0; i < kept.length; i++) {
      most = !kept[i] && (most < 0 || broken[i] > broken[most]) ? i : most;
    }
    return most;
  }
}

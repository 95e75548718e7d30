package counterset.bound;

import java.util.Arrays;

/**
 * Paths of a session as states and arcs, listed one by one, so that some can be left out and others
 * told apart.
 *
 * <p>States are numbered so that arcs lead to higher numbers; the first is the start and the last
 * the end of the session.
 */
final class Diagram implements Longest {

  static final int UNREACHED = Arcs.NEVER / 2;

  final Tags tags;
  final int states;
  final int[] first;
  final int[] from;
  final int[] points;
  final int[] tag;

  private final int[] best;
  private final int[] arc;

  Diagram(Tags tags, ArcList arcs) {
    this.tags = tags;
    first = arcs.first();
    states = first.length - 1;
    from = arcs.from;
    points = arcs.points;
    tag = arcs.tag;
    best = new int[states];
    arc = new int[states];
  }

  /** One without any path. */
  static Diagram empty(Tags tags) {
    ArcList none = new ArcList();
    none.state();
    return new Diagram(tags, none);
  }

  int arcs() {
    return first[states];
  }

  @Override
  public int longest(Prices prices) {
    int[] worth = tags.worth(prices);
    for (int state = 1; state < states; state++) {
      int most = Arcs.NEVER;
      int by = -1;
      for (int i = first[state]; i < first[state + 1]; i++) {
        int value = best[from[i]] + points[i] + worth[tag[i]];
        if (value > most) {
          most = value;
          by = i;
        }
      }
      best[state] = Math.max(Arcs.NEVER, most);
      arc[state] = by;
    }
    return states < 2 ? Arcs.NEVER : best[states - 1];
  }

  @Override
  public Tour tour(Prices prices) {
    Tour tour = new Tour(prices.once.length);
    for (int state = states - 1; state > 0; state = from[arc[state]]) {
      tags.add(tag[arc[state]], tour);
    }
    return tour;
  }

  /** What remains without the arcs that no path of so many scaled points uses. */
  Diagram without(Prices prices, long least) {
    longest(prices);
    int[] worth = tags.worth(prices);
    int[] after = new int[states];
    Arrays.fill(after, Arcs.NEVER);
    after[states - 1] = 0;
    for (int state = states - 1; state > 0; state--) {
      for (int i = first[state]; i < first[state + 1] && after[state] > UNREACHED; i++) {
        int value = after[state] + points[i] + worth[tag[i]];
        after[from[i]] = Math.max(after[from[i]], value);
      }
    }
    ArcList kept = new ArcList();
    int[] number = new int[states];
    number[0] = kept.state();
    for (int state = 1; state < states; state++) {
      int before = kept.size;
      for (int i = first[state]; i < first[state + 1]; i++) {
        boolean reached = best[from[i]] > UNREACHED && after[state] > UNREACHED;
        if (reached && (long) best[from[i]] + points[i] + worth[tag[i]] + after[state] >= least) {
          kept.add(number[from[i]], points[i], tag[i]);
        }
      }
      number[state] = kept.size > before ? kept.state() : -1;
    }
    return new Diagram(tags, kept);
  }
}

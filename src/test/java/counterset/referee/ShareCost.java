package counterset.referee;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * The squared distance from a share, rounded half up, as steps; and the lower edge of its convex
 * hull, which says the same less exactly but helps to prove.
 *
 * <p>The distance comes in units of 1 / (2 E) sets for a sum of emphases E.
 */
final class ShareCost {

  private final long all;
  private final long most;
  private final List<Step> steps = new ArrayList<>();

  /**
   * The cost of distances up to a largest one.
   *
   * @param all the sum of emphases
   */
  ShareCost(long all, long most) {
    this.all = all;
    this.most = most;
    for (long distance = 1; distance <= most; distance++) {
      long more = of(distance) - of(distance - 1);
      if (more > 0) {
        steps.add(new Step(distance, more));
      }
    }
  }

  /** d^2 / (4 E^2), rounded half up. */
  long of(long distance) {
    long unit = 4 * all * all;
    long square = distance * distance;
    return square / unit + (2 * (square % unit) >= unit ? 1 : 0);
  }

  long most() {
    return of(most);
  }

  List<Step> steps() {
    return steps;
  }

  /** The edges of the hull from 0 to the largest distance. */
  List<Edge> hull() {
    Deque<long[]> corners = new ArrayDeque<>();
    corners.push(new long[] {0, 0});
    for (Step step : steps) {
      // The last distance before a step is where the cost is lowest for its length.
      addCorner(corners, step.from() - 1);
    }
    addCorner(corners, most);
    List<long[]> inOrder = new ArrayList<>(corners);
    List<Edge> edges = new ArrayList<>();
    for (int i = inOrder.size() - 1; i > 0; i--) {
      long[] from = inOrder.get(i);
      long[] to = inOrder.get(i - 1);
      edges.add(Edge.between(from, to));
    }
    return edges;
  }

  private void addCorner(Deque<long[]> corners, long distance) {
    long[] next = {distance, of(distance)};
    if (distance == corners.peek()[0]) {
      return;
    }
    while (corners.size() > 1) {
      long[] last = corners.pop();
      long[] before = corners.peek();
      long left = (last[1] - before[1]) * (next[0] - last[0]);
      long right = (next[1] - last[1]) * (last[0] - before[0]);
      if (left < right) {
        corners.push(last);
        break;
      }
    }
    corners.push(next);
  }

  /** From this distance on the cost is so many units more. */
  record Step(long from, long units) {}

  /** The line {@code run * cost - rise * distance >= offset}. */
  record Edge(long run, long rise, long offset) {

    static Edge between(long[] from, long[] to) {
      long run = to[0] - from[0];
      long rise = to[1] - from[1];
      return new Edge(run, rise, run * from[1] - rise * from[0]);
    }
  }
}

package counterset.bound;

import java.util.Arrays;

/** Arcs between states, added one by one. */
final class ArcList {

  int[] from = new int[1 << 12];
  int[] points = new int[1 << 12];
  int[] tag = new int[1 << 12];
  int size;

  /** By state, where the arcs into it begin, and where those into the last one end. */
  private int[] first = new int[1 << 10];

  private int states;

  void add(int start, int scaled, int adds) {
    if (size == from.length) {
      from = Arrays.copyOf(from, 2 * size);
      points = Arrays.copyOf(points, 2 * size);
      tag = Arrays.copyOf(tag, 2 * size);
    }
    from[size] = start;
    points[size] = scaled;
    tag[size++] = adds;
  }

  /** Ends the arcs into a state and returns its number, from 0. */
  int state() {
    if (states + 1 == first.length) {
      first = Arrays.copyOf(first, 2 * states + 2);
    }
    first[++states] = size;
    return states - 1;
  }

  /** As arcs into a state each; {@link #state} must have come after the last arc. */
  int[] first() {
    return Arrays.copyOf(first, states + 1);
  }
}

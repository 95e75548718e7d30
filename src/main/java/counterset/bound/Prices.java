package counterset.bound;

import java.util.Arrays;

/** What each step of a path earns beside its arcs, in scaled points. */
final class Prices {

  /** Of an exercise, once. */
  final int[] once;

  /** Of an exercise, in each place. */
  final int[] place;

  /** What a floor trip costs, at least 0. */
  int trip;

  /** What a superset of one exercise on both sides earns. */
  int oneSided;

  /** What a superset with a hole costs, at least 0. */
  int hole;

  Prices(int candidates) {
    once = new int[candidates];
    place = new int[candidates];
  }

  void clear() {
    Arrays.fill(once, 0);
    Arrays.fill(place, 0);
    trip = 0;
    oneSided = 0;
    hole = 0;
  }
}

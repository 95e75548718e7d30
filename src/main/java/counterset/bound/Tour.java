package counterset.bound;

/** What a path consists of. */
final class Tour {

  /** How often each candidate is done, both sides counting once. */
  final int[] done;

  /** How often each candidate fills a place. */
  final int[] placed;

  int trips;
  int oneSided;
  int holes;

  Tour(int candidates) {
    done = new int[candidates];
    placed = new int[candidates];
  }
}

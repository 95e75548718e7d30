package counterset.bound;

/** What an arc of a {@link Diagram} adds to a session, and what that earns, by tag. */
final class Tags {

  /** An exercise, done for the first time. */
  static final int ONCE = 0;

  /** The same, with a floor trip across a rest before it. */
  static final int ONCE_AFTER_TRIP = 1;

  /** The same, with floor trips inside the superset, in each round. */
  static final int ONCE_WITH_TRIPS = 2;

  /** The other side of the exercise right before, in a superset of its own. */
  static final int OTHER_SIDE = 3;

  /** What may be the other side of an exercise before it in the superset. */
  static final int AGAIN = 4;

  /** The same, with floor trips inside the superset. */
  static final int AGAIN_WITH_TRIPS = 5;

  private static final int KINDS = 6;

  private final int candidates;
  private final int tripsInside;
  private final int[] worth;

  Tags(int candidates, int tripsInside) {
    this.candidates = candidates;
    this.tripsInside = tripsInside;
    this.worth = new int[size()];
  }

  /** A candidate that comes in a way. */
  int of(int candidate, int kind) {
    return candidate * KINDS + kind;
  }

  /** A superset with a hole. */
  int hole() {
    return candidates * KINDS;
  }

  /** Nothing more. */
  int nothing() {
    return candidates * KINDS + 1;
  }

  int size() {
    return candidates * KINDS + 2;
  }

  /** The candidate that is done then, both sides counting once; -1 if none is. */
  int done(int tag) {
    return tag < hole() && tag % KINDS < OTHER_SIDE ? tag / KINDS : -1;
  }

  private int trips(int kind) {
    return switch (kind) {
      case ONCE_AFTER_TRIP -> 1;
      case ONCE_WITH_TRIPS, AGAIN_WITH_TRIPS -> tripsInside;
      default -> 0;
    };
  }

  /** By tag, what it earns; valid until the next call. */
  int[] worth(Prices prices) {
    for (int candidate = 0; candidate < candidates; candidate++) {
      for (int kind = 0; kind < KINDS; kind++) {
        worth[of(candidate, kind)] =
            prices.place[candidate]
                + (kind < OTHER_SIDE ? prices.once[candidate] : 0)
                + (kind == OTHER_SIDE ? prices.oneSided : 0)
                - trips(kind) * prices.trip;
      }
    }
    worth[hole()] = -prices.hole;
    return worth;
  }

  void add(int tag, Tour tour) {
    if (tag >= hole()) {
      tour.holes += tag == hole() ? 1 : 0;
      return;
    }
    int kind = tag % KINDS;
    tour.placed[tag / KINDS]++;
    tour.done[tag / KINDS] += kind < OTHER_SIDE ? 1 : 0;
    tour.oneSided += kind == OTHER_SIDE ? 1 : 0;
    tour.trips += trips(kind);
  }
}

package counterset.planning;

/** How many supersets of a session should be one-sided: from a quarter to a half of them. */
public final class OneSidedShare {

  private OneSidedShare() {}

  /** The fewest wanted of so many supersets; a quarter, rounded down. */
  public static int least(int supersets) {
    return supersets / 4;
  }

  /** The most wanted of so many supersets; a half, rounded up. */
  public static int most(int supersets) {
    return (supersets + 1) / 2;
  }

  /** How many supersets away from that a session is, at least 0. */
  public static int distance(int oneSided, int supersets) {
    return Math.max(0, Math.max(least(supersets) - oneSided, oneSided - most(supersets)));
  }
}

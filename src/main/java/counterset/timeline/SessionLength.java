package counterset.timeline;

import counterset.model.Intervals;

/** How many supersets fit a cap, and how many seconds they take. */
public final class SessionLength {

  private SessionLength() {}

  /**
   * The seconds of a session.
   *
   * @param supersets at least 0; with none there is no rest either
   */
  public static int seconds(Intervals clock, int supersets) {
    int blocks = supersets * clock.rounds();
    return clock.getReady()
        + clock.warmUp()
        + blocks * blockSeconds(clock)
        + Math.max(0, blocks - 1) * clock.rest()
        + clock.coolDown();
  }

  /** The seconds of one round of a superset, without the rest after it. */
  public static int blockSeconds(Intervals clock) {
    return clock.perSuperset() * clock.work() + (clock.perSuperset() - 1) * clock.between();
  }

  /** The largest number of supersets whose session is not longer than the cap; 0 if none fits. */
  public static int supersetsThatFit(Intervals clock, int minutes) {
    int perSuperset = clock.rounds() * (blockSeconds(clock) + clock.rest());
    int room = 60 * minutes - clock.getReady() - clock.warmUp() - clock.coolDown() + clock.rest();
    return Math.max(0, Math.floorDiv(room, perSuperset));
  }
}

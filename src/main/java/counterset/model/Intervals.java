package counterset.model;

/**
 * The lengths that make the clock of a session; seconds unless said otherwise. In files its name is
 * {@code clock}.
 *
 * @param getReady before the warm-up
 * @param work one work interval
 * @param between the seconds between the exercises of one superset; {@code switch} in files
 * @param rest after each round of a superset but the last of the session
 * @param perSuperset positions in a superset, 1 to 3
 * @param rounds how often a superset is done before the next one begins
 */
public record Intervals(
    int getReady,
    int warmUp,
    int work,
    int between,
    int rest,
    int coolDown,
    int perSuperset,
    int rounds) {

  /**
   * An express session: 45 s of work, straight into the partner exercise, 30 s of rest (common
   * practice, no source).
   */
  public static final Intervals EXPRESS = new Intervals(10, 150, 45, 0, 30, 0, 2, 1);

  public Intervals {
    if (getReady < 0 || warmUp < 0 || work < 1 || between < 0 || rest < 0 || coolDown < 0) {
      throw new IllegalArgumentException(
          "The seconds of a clock must not be negative, and work takes at least 1 s.");
    }
    if (perSuperset < 1 || perSuperset > 3 || rounds < 1) {
      throw new IllegalArgumentException("A superset has 1 to 3 positions and at least 1 round.");
    }
  }

  /** The same with another length of the cool-down. */
  public Intervals withCoolDown(int seconds) {
    return new Intervals(getReady, warmUp, work, between, rest, seconds, perSuperset, rounds);
  }

  /** The same with another number of rounds. */
  public Intervals withRounds(int number) {
    return new Intervals(getReady, warmUp, work, between, rest, coolDown, perSuperset, number);
  }
}

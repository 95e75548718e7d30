package counterset.score;

/**
 * What an exercise is worth to this client, whatever stands around it.
 *
 * @param pattern the number of its movement pattern, from 0
 * @param standing 3 a staple of the trade, 2 known, 1 a last resort
 * @param tier its place in the order of work: 4 a big lift done hard on both sides at once, 3 one
 *     on one side, or power, 2 several joints, 1 one joint, 0 easy
 * @param floorLast whether it is done on the floor, to which a session like this goes at the end
 * @param offTarget whether it trains nothing that is asked for
 * @param unloaded 2 if it leaves equipment lying that another exercise of its pattern lifts, 1 if
 *     it is a press of the body that does so, 0 else
 * @param softer 1 if a harder version of the same movement suits as well, 2 if it lies on the
 *     client's bench
 * @param partial whether it shortens its range and nothing asks for that
 * @param notHard whether the client is skilled and it is not hard
 * @param fatigue what it tires besides its muscles, as bits of {@link Fatigue}
 */
public record Merit(
    int pattern,
    int standing,
    EffortClass effort,
    int tier,
    boolean floorLast,
    boolean offTarget,
    int unloaded,
    int softer,
    boolean partial,
    boolean notHard,
    int fatigue) {

  /** The tier of a big lift done hard on both sides at once. */
  static final int BIG_LIFT = 4;

  /** The least tier of what is too hard to end with. */
  static final int HARD_WORK = 3;

  /** The tier of work for one joint. */
  static final int SMALL = 1;

  /** The tiers of the order of work. */
  static final int TIERS = 5;

  /** Whether it makes a working set that counts towards a pattern. */
  public boolean fillsPattern() {
    return isWorking() && standing > 1 && !offTarget;
  }

  /** Whether it leaves equipment lying that another exercise of its pattern lifts. */
  public boolean couldBeLoaded() {
    return unloaded > 0;
  }

  /** Whether it is at least working effort. */
  public boolean isWorking() {
    return effort != EffortClass.EASY;
  }
}

package counterset.model;

import java.util.List;

/**
 * Handling equipment and moving the body between two exercises.
 *
 * @param after the position that has just ended
 * @param round the round that has just ended, from 1
 * @param from what has just ended
 * @param to what comes next
 * @param seconds how long it takes
 * @param available how long it may take
 * @param takeOff items put away
 * @param putOn items taken up
 */
public record Changeover(
    At after,
    int round,
    Exercise from,
    Exercise to,
    int seconds,
    int available,
    List<Item> takeOff,
    List<Item> putOn) {

  public Changeover {
    takeOff = List.copyOf(takeOff);
    putOn = List.copyOf(putOn);
  }

  /** Whether the body goes from standing, seated or wall to the floor or back. */
  public boolean changesLevel() {
    return from.position().isFloor() != to.position().isFloor();
  }

  /** Seconds by which it does not fit, 0 if it does. */
  public int excess() {
    return Math.max(0, seconds - available);
  }
}

package counterset.score;

import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the constraints say of a session or week.
 *
 * @param tallies by the constraint's id; what concerns the followers of a track by the id and the
 *     number of the track, such as {@code changeoverTooLong track 1}
 */
record Said(int hard, int medium, int soft, SortedMap<String, Tally> tallies) {

  /** The three levels as text. */
  String score() {
    return hard + "/" + medium + "/" + soft;
  }

  /** The name of a tally of a track, which counts from 0. */
  static String key(String constraint, int track) {
    return constraint + " track " + (track + 1);
  }

  /** The id of the constraint that a tally is of. */
  static String constraint(String key) {
    return key.split(" ")[0];
  }

  /** This and what is said of another session, track by track. */
  Said plus(Said other) {
    SortedMap<String, Tally> sums = new TreeMap<>(tallies);
    other.tallies.forEach((key, tally) -> sums.merge(key, tally, Tally::plus));
    return new Said(hard + other.hard, medium + other.medium, soft + other.soft, sums);
  }
}

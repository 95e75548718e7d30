package counterset.model;

import java.util.List;
import java.util.Optional;

/**
 * One place where a constraint matches.
 *
 * @param constraint its id
 * @param amount units of the constraint's weight, at least 1
 * @param points what it adds to the score of its level; negative for a cost
 * @param places where, in order; empty if it is about the whole session
 * @param subject the id of the muscle group, equipment or exercise that it is about, where no place
 *     tells
 * @param track the name of the track whose followers it concerns; empty if it is about the session
 *     itself
 */
public record Match(
    String constraint,
    int amount,
    int points,
    List<At> places,
    Optional<String> subject,
    Optional<String> track) {

  public Match {
    places = List.copyOf(places);
  }

  /** A match of the session itself. */
  public Match(
      String constraint, int amount, int points, List<At> places, Optional<String> subject) {
    this(constraint, amount, points, places, subject, Optional.empty());
  }
}

package counterset.search;

import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Session;
import java.util.List;
import java.util.Optional;

/**
 * An exercise that could stand at a place instead of what stands there, and what the session is
 * worth with it.
 *
 * @param exercise what would stand at the place
 * @param places where the session changes, in order: the place itself, and the other of its
 *     superset where that has to follow
 * @param partner what fills the other place if that came free, because a one-sided exercise left it
 * @param session the session with it, modifications included; its warm-up and cool-down are still
 *     those of before
 * @param hard hard points of the whole session with it, at most 0
 * @param medium medium points of the whole session with it, at most 0
 * @param soft soft points of the whole session with it
 */
public record Replacement(
    Exercise exercise,
    List<At> places,
    Optional<Exercise> partner,
    Session session,
    int hard,
    int medium,
    int soft) {

  public Replacement {
    places = List.copyOf(places);
  }
}

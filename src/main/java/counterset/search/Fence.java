package counterset.search;

import counterset.score.Candidate;
import java.util.Optional;

/**
 * Which sessions a search may enter. A rule of the search and not of the score: what lies outside
 * is never looked at, however good it is. An instance serves all threads at once.
 */
public interface Fence {

  /**
   * Whether a session lies inside.
   *
   * @param places the candidates by place, null where there is none; to be read only
   */
  boolean admits(Candidate[] places);

  /** The session that a search stays near, by place; empty if there is none. To be read only. */
  default Optional<Candidate[]> home() {
    return Optional.empty();
  }
}

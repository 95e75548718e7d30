package counterset.referee;

import counterset.model.Exercise;
import counterset.model.Session;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What the referee says of a problem. Without a session all numbers are 0 and mean nothing.
 *
 * @param medium of the best session found, at most 0
 * @param mediumBound no session that breaks no rule has more
 * @param soft of the best session found
 * @param softBound no session with at least this medium that breaks no rule has more; {@link
 *     #UNBOUNDED} if nothing is known
 * @param places the best session found: its exercises by superset and position, null for a hole
 * @param size of the model
 */
public record Verdict(
    Status status,
    long medium,
    long mediumBound,
    long soft,
    long softBound,
    List<List<Exercise>> places,
    Size size) {

  /** The bound that always holds. */
  public static final long UNBOUNDED = Long.MAX_VALUE;

  /** How much is known. */
  public enum Status {
    /** The session is the best that there is. */
    PROVEN,
    /** There is a session, and bounds. */
    FOUND,
    /** Every session breaks a rule. */
    INFEASIBLE,
    /** Nothing was found within the limits. */
    UNKNOWN
  }

  /**
   * How large a model is.
   *
   * @param fillings ways to fill a superset, summed over the supersets
   * @param arcs ways from one superset to the next, summed likewise
   */
  public record Size(int exercises, int supersets, int fillings, int arcs) {}

  static Verdict without(Status status, Size size) {
    return new Verdict(status, 0, 0, 0, 0, List.of(), size);
  }

  /** Whether its session has more points, medium ones first. */
  boolean isBetterThan(Verdict other) {
    return medium > other.medium || medium == other.medium && soft > other.soft;
  }

  /** The session, without a warm-up and cool-down; a superset with a hole closes up. */
  public Session session() {
    List<Superset> supersets = new ArrayList<>();
    for (List<Exercise> superset : places) {
      supersets.add(
          new Superset(supersets.size() + 1, superset.stream().filter(Objects::nonNull).toList()));
    }
    return new Session(List.of(), supersets, List.of());
  }
}

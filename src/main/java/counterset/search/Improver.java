package counterset.search;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Makes a given session better and keeps as much of it as asked for.
 *
 * <p>A change is a place that holds another exercise than before, or nothing any more; a one-sided
 * exercise that comes to fill a superset counts once for both sides. So two exercises that swap
 * places are two changes, and an exercise for a place that was empty is one. Modifications, the
 * warm-up and the cool-down follow and count for nothing; a warm-up or cool-down that somebody
 * changed by hand stays. Supersets for which the clock has no room are left off at the end, which
 * counts for nothing either.
 */
public final class Improver {

  /**
   * Up to so many changes are tried one after another as well; measured, neither that nor walks
   * find the best alone.
   */
  static final int ONE_BY_ONE = 4;

  private final Catalogue catalogue;
  private final String version;
  private final Halt halt = new Halt();

  /**
   * An improver.
   *
   * @param version of this program, for the notes in plans
   */
  public Improver(Catalogue catalogue, String version) {
    this.catalogue = catalogue;
    this.version = version;
  }

  /**
   * The best plan found with at most so many changes; never worse than the given one. With one
   * change it is the best there is.
   *
   * @param start a plan of any session, whatever it breaks or holds; scored anew
   * @param changes how many changes at most; empty for as many as it likes
   * @throws IllegalArgumentException if the changes are below 0
   */
  public Plan improve(Plan start, OptionalInt changes, Limit limit) {
    if (changes.isPresent() && changes.getAsInt() < 0) {
      throw new IllegalArgumentException(
          "The changes (" + changes.getAsInt() + ") must be 0 or more.");
    }
    Rework rework = new Rework(new GivenSession(start, catalogue, version), List.of(), limit, halt);
    List<Reworked> found = new ArrayList<>();
    int near = Math.min(changes.orElse(ONE_BY_ONE), ONE_BY_ONE);
    found.addAll(rework.near(near));
    if (changes.isEmpty()) {
      found.add(rework.free(near));
    } else if (changes.getAsInt() > 1) {
      found.add(rework.within(changes.getAsInt(), near));
    }
    Reworked best = rework.unchanged();
    for (Reworked other : found) {
      best = other.beats(best) ? other : best;
    }
    return rework.plan(best, limit);
  }

  /** The places that count as a change from one plan to another, in order. */
  public static List<At> changed(Plan from, Plan to) {
    return ChangedPlaces.between(from, to);
  }

  /** Ends soon, with the best found so far. May be called from any thread. */
  public void stop() {
    halt.stop();
  }
}

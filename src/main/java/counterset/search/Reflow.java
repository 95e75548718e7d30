package counterset.search;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * Plans the rest of a session around what the coach chose, with the fewest other changes.
 *
 * <p>Rules that the choice breaks and wishes that it leaves unmet are mended as far as any session
 * around it can, with the fewest changes that do. Beyond that a further change is made only if it
 * wins back at least {@link #LEAST_GAIN} points. Changes are counted as by {@link Improver}.
 */
public final class Reflow {

  /** Points that each change must win back where no rule or wish asks for it. */
  public static final int LEAST_GAIN = 5;

  /** Up to so many changes are tried one after another; beyond, only to mend rules and wishes. */
  private static final int ONE_BY_ONE = 4;

  /** With a time limit, the parts that it is shared out in. */
  private static final int SEARCHES = 4;

  private final Catalogue catalogue;
  private final String version;
  private final Halt halt = new Halt();

  /**
   * Ready to plan around choices.
   *
   * @param version of this program, for the notes in plans
   */
  public Reflow(Catalogue catalogue, String version) {
    this.catalogue = catalogue;
    this.version = version;
  }

  /**
   * The plan around a choice; never worse than the given one.
   *
   * @param swapped a plan that holds the choice already
   * @param chosen the places that stay as they are; both sides of a one-sided exercise go together
   * @throws IllegalArgumentException if nothing stands at one of them
   */
  public Plan reflow(Plan swapped, List<At> chosen, Limit limit) {
    Rework rework =
        new Rework(
            new GivenSession(swapped, catalogue, version), chosen, limit.part(SEARCHES), halt);
    List<Reworked> found = new ArrayList<>(List.of(rework.unchanged()));
    found.addAll(rework.near(ONE_BY_ONE));
    for (int changes = 3; changes <= ONE_BY_ONE && !halt.isStopped(); changes++) {
      found.add(rework.within(changes, ONE_BY_ONE));
    }
    Reworked free = rework.free(ONE_BY_ONE);
    if (found.stream().noneMatch(other -> mendsAsMuch(other.worth(), free.worth()))) {
      found.add(furtherAway(rework, free));
    }
    Reworked best = null;
    Worth mended = found.stream().map(Reworked::worth).max(Worth::compareTo).orElseThrow();
    for (Reworked other : found) {
      if (mendsAsMuch(other.worth(), mended) && (best == null || isBetter(other, best))) {
        best = other;
      }
    }
    return rework.plan(best, limit);
  }

  /** The fewest changes that mend as much as any number does, found by halving what is open. */
  private Reworked furtherAway(Rework rework, Reworked free) {
    Reworked best = free;
    int tooFew = ONE_BY_ONE;
    while (best.changes() - tooFew > 1 && !halt.isStopped()) {
      int changes = Math.min(2 * tooFew, (tooFew + best.changes()) / 2);
      Reworked found = rework.within(changes, ONE_BY_ONE);
      if (mendsAsMuch(found.worth(), free.worth())) {
        best = found;
      } else {
        tooFew = changes;
      }
    }
    return best;
  }

  private static boolean mendsAsMuch(Worth worth, Worth other) {
    return worth.hard() > other.hard()
        || worth.hard() == other.hard() && worth.medium() >= other.medium();
  }

  private static boolean isBetter(Reworked one, Reworked other) {
    int gain = one.worth().soft() - other.worth().soft();
    int changes = one.changes() - other.changes();
    int surplus = gain - LEAST_GAIN * changes;
    return surplus > 0 || surplus == 0 && changes < 0;
  }

  /** Ends soon, with the best found so far. May be called from any thread. */
  public void stop() {
    halt.stop();
  }
}

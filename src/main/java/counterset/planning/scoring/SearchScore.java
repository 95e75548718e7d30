package counterset.planning.scoring;

import counterset.planning.Candidate;
import counterset.planning.Change;
import counterset.planning.SessionFacts;
import counterset.planning.constraints.SessionConstraint;

/**
 * The score that drives the search: the sum that {@link StraightLine} would make of a session,
 * without its matches.
 *
 * <p>It works out a whole session, or what a change would make of the session last worked out,
 * which costs a fraction. It keeps scratch arrays, so an instance serves one thread.
 */
public final class SearchScore {

  private final Kept kept;
  private final int overrun;
  private final SupersetScore supersets;
  private final WalkScore walk;
  private final CountScore counts;
  private final Candidate[] session;
  private int keptCost;

  public SearchScore(SessionFacts facts) {
    Tables tables = Tables.of(facts);
    kept = new Kept(facts);
    overrun = tables.weight(SessionConstraint.CLOCK_OVERRUN) * facts.overrunSeconds();
    supersets = new SupersetScore(facts, tables);
    walk = new WalkScore(facts, tables);
    counts = new CountScore(facts, tables);
    session = new Candidate[facts.supersets() * facts.perSuperset()];
  }

  /**
   * Works out the score of a session, which changes start from until the next is worked out.
   *
   * @param places the candidates by place, null where there is none
   */
  public void compute(Candidate[] places) {
    System.arraycopy(places, 0, session, 0, session.length);
    keptCost = kept.cost(session);
    supersets.compute(session);
    walk.compute(session);
    counts.compute(session);
  }

  /** Works out what a change would make of the session last computed. */
  public void tryOut(Change change) {
    change.exchange(session);
    keptCost = kept.cost(session);
    supersets.tryOut(session, change);
    walk.tryOut(session, change);
    counts.tryOut(session, change);
    change.exchange(session);
  }

  /** Hard points of the session or change last worked out, at most 0. */
  public int hard() {
    return supersets.hard() + walk.hard() + counts.hard() - keptCost - overrun;
  }

  /** Medium points of the session or change last worked out, at most 0. */
  public int medium() {
    return supersets.medium() + counts.medium();
  }

  /** Soft points of the session or change last worked out. */
  public int soft() {
    return supersets.soft() + walk.soft() + counts.soft();
  }
}

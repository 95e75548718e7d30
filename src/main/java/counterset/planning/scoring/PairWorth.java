package counterset.planning.scoring;

import counterset.planning.Candidate;
import counterset.planning.PairPoints;
import counterset.planning.SessionFacts;
import counterset.planning.constraints.SessionConstraint;
import counterset.timeline.Handling;
import counterset.timeline.Kit;

/**
 * What it is worth that one candidate follows another inside a superset, looked at by themselves:
 * with nothing in use but what the first one needs. Tells the search what to try first.
 */
public final class PairWorth {

  private final SessionFacts facts;
  private final Tables tables;

  public PairWorth(SessionFacts facts) {
    this.facts = facts;
    this.tables = Tables.of(facts);
  }

  /** Points for what follows, its own costs included. */
  public int of(Candidate first, Candidate next) {
    long inUse = first.handling().needs();
    Handling handling = next.handling();
    int items =
        Long.bitCount(Kit.takenOff(inUse, handling)) + Long.bitCount(Kit.putOn(inUse, handling));
    boolean sameMuscle = tables.sameMuscleMatters && (first.primary() & next.primary()) != 0;
    return tables.weight(SessionConstraint.OPPOSING_PAIR)
            * PairPoints.of(facts.problem().pairing(), facts.kind(first, next))
        - tables.weight(SessionConstraint.SAME_MUSCLE_IN_A_ROW)
            * (sameMuscle ? PairPoints.sameMuscle(true) : 0)
        - tables.weight(SessionConstraint.JOINT_AGAIN)
            * Integer.bitCount(first.strained() & next.strained())
        - tables.weight(SessionConstraint.EQUIPMENT_CHANGE) * items
        - tables.weight(SessionConstraint.CHANGEOVER_SECONDS)
            * facts.kit().seconds(inUse, first.handling(), handling)
        - tables.placeSoft[next.index()]
        - tables.ownSoft[next.index()];
  }
}

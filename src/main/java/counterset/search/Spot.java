package counterset.search;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.entity.PlanningPin;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import counterset.score.Candidate;
import counterset.score.SessionFacts;
import java.util.List;

/**
 * What is decided for one place of one session: the exercise that stands there, or what the
 * followers of a track do instead.
 */
@PlanningEntity
public class Spot {

  @PlanningId private int number;
  private int day;
  private int index;
  private SessionFacts facts;
  @PlanningPin private boolean pinned;

  @PlanningVariable(allowsUnassigned = true)
  private Candidate candidate;

  /** For the solver, which clones spots. */
  public Spot() {}

  /**
   * A spot.
   *
   * @param number its number in the draft, from 0
   * @param day the number of its session, from 0
   * @param index its number in the session: its places in order, then the stand-ins track by track
   */
  Spot(int number, int day, int index, SessionFacts facts, boolean pinned, Candidate candidate) {
    this.number = number;
    this.day = day;
    this.index = index;
    this.facts = facts;
    this.pinned = pinned;
    this.candidate = candidate;
  }

  /** What may stand here: each session has candidates of its own. */
  @ValueRangeProvider
  public List<Candidate> getCandidates() {
    return facts.candidates();
  }

  /** Its number in the draft, from 0. */
  public int getNumber() {
    return number;
  }

  /** The number of its session, from 0. */
  public int getDay() {
    return day;
  }

  /** Its number in the session, from 0. */
  public int getIndex() {
    return index;
  }

  public boolean isPinned() {
    return pinned;
  }

  public Candidate getCandidate() {
    return candidate;
  }

  public void setCandidate(Candidate candidate) {
    this.candidate = candidate;
  }

  /** The same with nothing shared that changes. */
  Spot copy() {
    return new Spot(number, day, index, facts, pinned, candidate);
  }

  @Override
  public String toString() {
    return "session " + (day + 1) + " spot " + index + "=" + candidate;
  }
}

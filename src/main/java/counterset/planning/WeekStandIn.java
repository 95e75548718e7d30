package counterset.planning;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import java.util.List;

/** A {@link StandIn} of one session of a week. */
@PlanningEntity
public class WeekStandIn {

  @PlanningId private int index;
  private WeekDay day;
  private int standIn;

  @PlanningVariable(allowsUnassigned = true)
  private Candidate candidate;

  /** For the solver, which clones stand-ins. */
  public WeekStandIn() {}

  /**
   * A stand-in, the same as in the session.
   *
   * @param index its number in the week, from 0
   */
  public WeekStandIn(int index, WeekDay day, StandIn standIn) {
    this.index = index;
    this.day = day;
    this.standIn = standIn.getIndex();
    this.candidate = standIn.getCandidate();
  }

  /** What may stand here. */
  @ValueRangeProvider
  public List<Candidate> getCandidates() {
    return day.facts().candidates();
  }

  public int getIndex() {
    return index;
  }

  public WeekDay getDay() {
    return day;
  }

  /** Its number in its session, from 0. */
  public int getStandIn() {
    return standIn;
  }

  public Candidate getCandidate() {
    return candidate;
  }

  public void setCandidate(Candidate candidate) {
    this.candidate = candidate;
  }

  @Override
  public String toString() {
    return "session " + day.index() + " stand-in " + standIn + "=" + candidate;
  }
}

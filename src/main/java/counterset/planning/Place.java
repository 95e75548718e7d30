package counterset.planning;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.entity.PlanningPin;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import counterset.model.At;

/** One position of one superset, to be filled with a candidate. */
@PlanningEntity
public class Place {

  @PlanningId private int index;
  private int superset;
  private int position;
  @PlanningPin private boolean pinned;

  @PlanningVariable(allowsUnassigned = true)
  private Candidate candidate;

  /** For the solver, which clones places. */
  public Place() {}

  /**
   * A place.
   *
   * @param index its number in the session, from 0
   * @param superset from 0
   * @param position from 0
   */
  public Place(int index, int superset, int position, boolean pinned, Candidate candidate) {
    this.index = index;
    this.superset = superset;
    this.position = position;
    this.pinned = pinned;
    this.candidate = candidate;
  }

  public int getIndex() {
    return index;
  }

  public int getSuperset() {
    return superset;
  }

  public int getPosition() {
    return position;
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

  /** How the coach writes this place. */
  public At at() {
    return new At(superset + 1, position);
  }

  @Override
  public String toString() {
    return at() + "=" + candidate;
  }
}

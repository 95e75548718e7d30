package counterset.planning;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;

/**
 * What the followers of one track do at one place, if what stands there does not suit them.
 *
 * <p>It counts only where it is needed. For both sides of a one-sided exercise the stand-in of its
 * first place counts.
 */
@PlanningEntity
public class StandIn {

  @PlanningId private int index;
  private int track;
  private int place;
  private int superset;
  private int position;

  @PlanningVariable(allowsUnassigned = true)
  private Candidate candidate;

  /** For the solver, which clones stand-ins. */
  public StandIn() {}

  /**
   * A stand-in, for nothing yet.
   *
   * @param index its number among all stand-ins, from 0
   * @param track from 0
   * @param place whose exercise it replaces
   */
  public StandIn(int index, int track, Place place) {
    this.index = index;
    this.track = track;
    this.place = place.getIndex();
    this.superset = place.getSuperset();
    this.position = place.getPosition();
  }

  public int getIndex() {
    return index;
  }

  public int getTrack() {
    return track;
  }

  /** The index of its place. */
  public int getPlace() {
    return place;
  }

  public int getSuperset() {
    return superset;
  }

  public int getPosition() {
    return position;
  }

  public Candidate getCandidate() {
    return candidate;
  }

  public void setCandidate(Candidate candidate) {
    this.candidate = candidate;
  }

  @Override
  public String toString() {
    return "track " + track + " at place " + place + "=" + candidate;
  }
}

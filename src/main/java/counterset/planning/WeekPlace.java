package counterset.planning;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.entity.PlanningPin;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import java.util.List;

/** One place of one session of a week. */
@PlanningEntity
public class WeekPlace {

  @PlanningId private int index;
  private WeekDay day;
  private int place;
  private int superset;
  private int position;
  @PlanningPin private boolean pinned;

  @PlanningVariable(allowsUnassigned = true)
  private Candidate candidate;

  /** For the solver, which clones places. */
  public WeekPlace() {}

  /**
   * A place, filled like that of the session.
   *
   * @param index its number in the week, from 0
   */
  public WeekPlace(int index, WeekDay day, Place place) {
    this.index = index;
    this.day = day;
    this.place = place.getIndex();
    this.superset = place.getSuperset();
    this.position = place.getPosition();
    this.pinned = place.isPinned();
    this.candidate = place.getCandidate();
  }

  /** The place in its session by itself. */
  public Place alone() {
    return new Place(place, superset, position, pinned, candidate);
  }

  /** What may stand here: each session has candidates of its own. */
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
  public int getPlace() {
    return place;
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

  @Override
  public String toString() {
    return "session " + day.index() + " " + alone();
  }
}

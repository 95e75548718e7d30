package counterset.planning;

import ai.timefold.solver.core.api.domain.solution.ConstraintWeightOverrides;
import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.ProblemFactProperty;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import java.util.List;

/** A session being planned: its places in order and what they are scored by. */
@PlanningSolution
public class SessionSolution {

  @ProblemFactProperty private SessionFacts facts;
  @ValueRangeProvider private List<Candidate> candidates;
  @PlanningEntityCollectionProperty private List<Place> places;
  @PlanningEntityCollectionProperty private List<StandIn> standIns;
  @PlanningScore private HardMediumSoftScore score;
  private ConstraintWeightOverrides<HardMediumSoftScore> weights;
  // Null where a search may go anywhere.
  private Fence fence;

  /** For the solver, which clones solutions. */
  public SessionSolution() {}

  public SessionSolution(
      SessionFacts facts,
      List<Place> places,
      List<StandIn> standIns,
      ConstraintWeightOverrides<HardMediumSoftScore> weights) {
    this.facts = facts;
    this.candidates = facts.candidates();
    this.places = places;
    this.standIns = standIns;
    this.weights = weights;
  }

  public SessionFacts getFacts() {
    return facts;
  }

  /** Which sessions a search may enter; null if it may go anywhere. */
  public Fence getFence() {
    return fence;
  }

  /** Keeps a search from here inside, where the solution itself must lie. */
  public void setFence(Fence fence) {
    this.fence = fence;
  }

  public List<Place> getPlaces() {
    return places;
  }

  /** Track by track, each for all places in order; none if there are no tracks. */
  public List<StandIn> getStandIns() {
    return standIns;
  }

  public HardMediumSoftScore getScore() {
    return score;
  }

  public void setScore(HardMediumSoftScore score) {
    this.score = score;
  }

  public ConstraintWeightOverrides<HardMediumSoftScore> getWeights() {
    return weights;
  }

  public void setWeights(ConstraintWeightOverrides<HardMediumSoftScore> weights) {
    this.weights = weights;
  }
}

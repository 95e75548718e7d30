package counterset.planning;

import ai.timefold.solver.core.api.domain.solution.ConstraintWeightOverrides;
import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.ProblemFactProperty;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import java.util.List;

/** A week being planned: the places of all its sessions and what they are scored by. */
@PlanningSolution
public class WeekSolution {

  @ProblemFactProperty private WeekFacts facts;
  @PlanningEntityCollectionProperty private List<WeekPlace> places;
  @PlanningEntityCollectionProperty private List<WeekStandIn> standIns;
  @PlanningScore private HardMediumSoftScore score;
  private ConstraintWeightOverrides<HardMediumSoftScore> weights;

  /** For the solver, which clones solutions. */
  public WeekSolution() {}

  public WeekSolution(
      WeekFacts facts,
      List<WeekPlace> places,
      List<WeekStandIn> standIns,
      ConstraintWeightOverrides<HardMediumSoftScore> weights) {
    this.facts = facts;
    this.places = places;
    this.standIns = standIns;
    this.weights = weights;
  }

  public WeekFacts getFacts() {
    return facts;
  }

  /** Session by session, each in order. */
  public List<WeekPlace> getPlaces() {
    return places;
  }

  /** Session by session, each in order; none for one without tracks. */
  public List<WeekStandIn> getStandIns() {
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

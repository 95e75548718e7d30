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
  @PlanningScore private HardMediumSoftScore score;
  private ConstraintWeightOverrides<HardMediumSoftScore> weights;

  /** For the solver, which clones solutions. */
  public SessionSolution() {}

  public SessionSolution(
      SessionFacts facts,
      List<Place> places,
      ConstraintWeightOverrides<HardMediumSoftScore> weights) {
    this.facts = facts;
    this.candidates = facts.candidates();
    this.places = places;
    this.weights = weights;
  }

  public SessionFacts getFacts() {
    return facts;
  }

  public List<Place> getPlaces() {
    return places;
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

package counterset.search;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.Move;
import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningVariableMetaModel;
import ai.timefold.solver.core.preview.api.move.MutableSolutionView;
import counterset.score.Candidate;
import java.util.Arrays;
import java.util.List;

/** Puts something else into some spots of a draft. */
final class DraftMove implements Move<Draft> {

  private final PlanningVariableMetaModel<Draft, Spot, Candidate> variable;
  private final Spot[] spots;
  private final Candidate[] candidates;

  /**
   * A move.
   *
   * @param candidates what each of the spots is to hold
   */
  DraftMove(
      PlanningVariableMetaModel<Draft, Spot, Candidate> variable,
      Spot[] spots,
      Candidate[] candidates) {
    this.variable = variable;
    this.spots = spots;
    this.candidates = candidates;
  }

  @Override
  public void execute(MutableSolutionView<Draft> view) {
    for (int i = 0; i < spots.length; i++) {
      view.changeVariable(variable, spots[i], candidates[i]);
    }
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<Draft> director) {
    return spots.length > 0;
  }

  @Override
  public List<Spot> getPlanningEntities() {
    return List.of(spots);
  }

  @Override
  public List<Candidate> getPlanningValues() {
    return Arrays.asList(candidates);
  }

  @Override
  public String toString() {
    return getPlanningEntities() + " -> " + getPlanningValues();
  }
}

package counterset.planning.moves;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import counterset.planning.Candidate;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import java.util.Arrays;
import java.util.List;

/** Fills some places anew, all at once. */
final class FillMove extends AbstractMove<SessionSolution> {

  private final Place[] places;
  private final Candidate[] candidates;

  /**
   * A move.
   *
   * @param places what to fill, none of them pinned
   * @param candidates what to fill them with, in the same order
   */
  FillMove(Place[] places, Candidate[] candidates) {
    this.places = places;
    this.candidates = candidates;
  }

  /** Does to an array of candidates by place what this move does to the places. */
  void apply(Candidate[] byPlace) {
    for (int i = 0; i < places.length; i++) {
      byPlace[places[i].getIndex()] = candidates[i];
    }
  }

  /** Undoes {@link #apply}. */
  void revert(Candidate[] byPlace) {
    for (Place place : places) {
      byPlace[place.getIndex()] = place.getCandidate();
    }
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<SessionSolution> director) {
    for (int i = 0; i < places.length; i++) {
      if (places[i].getCandidate() != candidates[i]) {
        return true;
      }
    }
    return false;
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<SessionSolution> director) {
    for (int i = 0; i < places.length; i++) {
      if (places[i].getCandidate() != candidates[i]) {
        director.beforeVariableChanged(places[i], "candidate");
        places[i].setCandidate(candidates[i]);
        director.afterVariableChanged(places[i], "candidate");
      }
    }
  }

  @Override
  public List<Place> getPlanningEntities() {
    return List.of(places);
  }

  @Override
  public List<Candidate> getPlanningValues() {
    return Arrays.asList(candidates);
  }

  @Override
  public String toString() {
    return Arrays.toString(places) + " -> " + Arrays.toString(candidates);
  }
}

package counterset.planning.moves;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import counterset.planning.Candidate;
import counterset.planning.WeekPlace;
import counterset.planning.WeekSolution;
import counterset.planning.WeekStandIn;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Fills some places and stand-ins of a week anew, all at once. */
final class WeekFillMove extends AbstractMove<WeekSolution> {

  private final Map<WeekPlace, Candidate> places = new LinkedHashMap<>();
  private final Map<WeekStandIn, Candidate> standIns = new LinkedHashMap<>();

  /** The move from a solution to where a walk through it was best. */
  WeekFillMove(WeekSolution solution, WeekWalk walk) {
    for (WeekPlace place : solution.getPlaces()) {
      Candidate candidate = walk.days().get(place.getDay().index()).best()[place.getPlace()];
      if (place.getCandidate() != candidate) {
        places.put(place, candidate);
      }
    }
    for (WeekStandIn standIn : solution.getStandIns()) {
      Candidate candidate =
          walk.days().get(standIn.getDay().index()).bestStandIns()[standIn.getStandIn()];
      if (standIn.getCandidate() != candidate) {
        standIns.put(standIn, candidate);
      }
    }
  }

  /** A walk that leads back to where it began is a move too: the solver is to count it. */
  @Override
  public boolean isMoveDoable(ScoreDirector<WeekSolution> director) {
    return true;
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<WeekSolution> director) {
    places.forEach(
        (place, candidate) -> {
          director.beforeVariableChanged(place, "candidate");
          place.setCandidate(candidate);
          director.afterVariableChanged(place, "candidate");
        });
    standIns.forEach(
        (standIn, candidate) -> {
          director.beforeVariableChanged(standIn, "candidate");
          standIn.setCandidate(candidate);
          director.afterVariableChanged(standIn, "candidate");
        });
  }

  @Override
  public List<Object> getPlanningEntities() {
    List<Object> entities = new ArrayList<>(places.keySet());
    entities.addAll(standIns.keySet());
    return entities;
  }

  @Override
  public List<Candidate> getPlanningValues() {
    List<Candidate> values = new ArrayList<>(places.values());
    values.addAll(standIns.values());
    return values;
  }

  @Override
  public String toString() {
    return getPlanningEntities() + " -> " + getPlanningValues();
  }
}

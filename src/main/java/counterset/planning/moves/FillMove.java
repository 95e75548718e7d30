package counterset.planning.moves;

import ai.timefold.solver.core.api.score.director.ScoreDirector;
import ai.timefold.solver.core.impl.heuristic.move.AbstractMove;
import counterset.planning.Candidate;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import counterset.planning.StandIn;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Fills some places and stand-ins anew, all at once. */
final class FillMove extends AbstractMove<SessionSolution> {

  private final Place[] places;
  private final Candidate[] candidates;
  private final StandIn[] standIns;
  private final Candidate[] modifications;

  private FillMove(
      Place[] places, Candidate[] candidates, StandIn[] standIns, Candidate[] modifications) {
    this.places = places;
    this.candidates = candidates;
    this.standIns = standIns;
    this.modifications = modifications;
  }

  /**
   * The move from a solution to another line-up.
   *
   * @param byPlace what is to stand in each place, the same as before in pinned ones
   * @param byStandIn likewise for the stand-ins
   */
  static FillMove to(SessionSolution solution, Candidate[] byPlace, Candidate[] byStandIn) {
    Place[] places =
        solution.getPlaces().stream()
            .filter(place -> place.getCandidate() != byPlace[place.getIndex()])
            .toArray(Place[]::new);
    StandIn[] standIns =
        solution.getStandIns().stream()
            .filter(standIn -> standIn.getCandidate() != byStandIn[standIn.getIndex()])
            .toArray(StandIn[]::new);
    return new FillMove(
        places,
        Arrays.stream(places).map(place -> byPlace[place.getIndex()]).toArray(Candidate[]::new),
        standIns,
        Arrays.stream(standIns)
            .map(standIn -> byStandIn[standIn.getIndex()])
            .toArray(Candidate[]::new));
  }

  /** A walk that leads back to where it began is a move too: the solver is to count it. */
  @Override
  public boolean isMoveDoable(ScoreDirector<SessionSolution> director) {
    return true;
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
    for (int i = 0; i < standIns.length; i++) {
      if (standIns[i].getCandidate() != modifications[i]) {
        director.beforeVariableChanged(standIns[i], "candidate");
        standIns[i].setCandidate(modifications[i]);
        director.afterVariableChanged(standIns[i], "candidate");
      }
    }
  }

  /** The places alone. */
  List<Place> places() {
    return List.of(places);
  }

  @Override
  public List<Object> getPlanningEntities() {
    List<Object> entities = new ArrayList<>(Arrays.asList(places));
    entities.addAll(Arrays.asList(standIns));
    return entities;
  }

  @Override
  public List<Candidate> getPlanningValues() {
    List<Candidate> values = new ArrayList<>(Arrays.asList(candidates));
    values.addAll(Arrays.asList(modifications));
    return values;
  }

  @Override
  public String toString() {
    return getPlanningEntities() + " -> " + getPlanningValues();
  }
}

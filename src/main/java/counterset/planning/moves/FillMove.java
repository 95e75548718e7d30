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

  private static final Place[] NO_PLACES = {};
  private static final StandIn[] NO_STAND_INS = {};
  private static final Candidate[] NO_CANDIDATES = {};

  private final Place[] places;
  private final Candidate[] candidates;
  private final StandIn[] standIns;
  private final Candidate[] modifications;

  /**
   * A move that leaves the stand-ins as they are.
   *
   * @param places what to fill, none of them pinned
   * @param candidates what to fill them with, in the same order
   */
  FillMove(Place[] places, Candidate[] candidates) {
    this(places, candidates, NO_STAND_INS, NO_CANDIDATES);
  }

  private FillMove(
      Place[] places, Candidate[] candidates, StandIn[] standIns, Candidate[] modifications) {
    this.places = places;
    this.candidates = candidates;
    this.standIns = standIns;
    this.modifications = modifications;
  }

  /** A move that changes one stand-in alone. */
  static FillMove of(StandIn standIn, Candidate modification) {
    return new FillMove(
        NO_PLACES, NO_CANDIDATES, new StandIn[] {standIn}, new Candidate[] {modification});
  }

  /** The same move with other stand-ins, in the same order as their new candidates. */
  FillMove with(StandIn[] others, Candidate[] theirModifications) {
    return new FillMove(places, candidates, others, theirModifications);
  }

  /** Whether it touches no place. */
  boolean isOfStandInsOnly() {
    return places.length == 0;
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

  /** Does to an array of candidates by stand-in what this move does to the stand-ins. */
  void applyToStandIns(Candidate[] byStandIn) {
    for (int i = 0; i < standIns.length; i++) {
      byStandIn[standIns[i].getIndex()] = modifications[i];
    }
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<SessionSolution> director) {
    for (int i = 0; i < places.length; i++) {
      if (places[i].getCandidate() != candidates[i]) {
        return true;
      }
    }
    for (int i = 0; i < standIns.length; i++) {
      if (standIns[i].getCandidate() != modifications[i]) {
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

package counterset.planning;

import ai.timefold.solver.core.api.domain.solution.ConstraintWeightOverrides;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Session;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Turns sessions into solutions and back. */
public final class SessionSolutions {

  private SessionSolutions() {}

  /**
   * A solution with nothing in it but the exercises that the coach keeps, which are pinned, and
   * what stands in for them.
   */
  public static SessionSolution empty(
      SessionFacts facts, Map<String, HardMediumSoftScore> weights) {
    List<Place> places = new ArrayList<>();
    for (int superset = 0; superset < facts.supersets(); superset++) {
      for (int position = 0; position < facts.perSuperset(); position++) {
        Candidate kept = kept(facts, superset, position);
        places.add(new Place(places.size(), superset, position, kept != null, kept));
      }
    }
    List<StandIn> standIns = new ArrayList<>();
    for (int track = 0; track < facts.tracks(); track++) {
      for (Place place : places) {
        standIns.add(new StandIn(standIns.size(), track, place));
      }
    }
    SessionSolution solution =
        new SessionSolution(facts, places, standIns, ConstraintWeightOverrides.of(weights));
    cast(solution);
    return solution;
  }

  private static void cast(SessionSolution solution) {
    List<StandIn> standIns = solution.getStandIns();
    if (!standIns.isEmpty()) {
      Candidate[] places =
          solution.getPlaces().stream().map(Place::getCandidate).toArray(Candidate[]::new);
      Candidate[] chosen = new Candidate[standIns.size()];
      SessionFacts facts = solution.getFacts();
      new Cast(facts, new Ranking(facts))
          .choose(places, new Candidate[chosen.length], places, chosen);
      standIns.forEach(standIn -> standIn.setCandidate(chosen[standIn.getIndex()]));
    }
  }

  /** A solution that holds a session as it is; its exercises must be candidates. */
  public static SessionSolution of(
      SessionFacts facts, Session session, Map<String, HardMediumSoftScore> weights) {
    SessionSolution solution = empty(facts, weights);
    for (Place place : solution.getPlaces()) {
      place.setCandidate(null);
    }
    for (Superset superset : session.supersets()) {
      for (int position = 0; position < superset.exercises().size(); position++) {
        Exercise exercise = superset.exercises().get(position);
        int index = (superset.number() - 1) * facts.perSuperset() + position;
        solution.getPlaces().get(index).setCandidate(facts.candidate(exercise.id()).orElseThrow());
      }
    }
    List<Map<At, Exercise>> modifications = session.modifications();
    for (StandIn standIn : solution.getStandIns()) {
      Place place = solution.getPlaces().get(standIn.getPlace());
      Exercise exercise =
          standIn.getTrack() < modifications.size()
              ? modifications.get(standIn.getTrack()).get(place.at())
              : null;
      standIn.setCandidate(exercise == null ? null : facts.candidate(exercise.id()).orElseThrow());
    }
    return solution;
  }

  /** The same with other places and stand-ins, and a place pinned where that is asked for. */
  public static SessionSolution with(
      SessionSolution solution, Candidate[] places, Candidate[] standIns, boolean[] pinned) {
    List<Place> filled = new ArrayList<>();
    for (Place place : solution.getPlaces()) {
      int index = place.getIndex();
      filled.add(
          new Place(index, place.getSuperset(), place.getPosition(), pinned[index], places[index]));
    }
    List<StandIn> cast = new ArrayList<>();
    for (StandIn standIn : solution.getStandIns()) {
      StandIn other =
          new StandIn(standIn.getIndex(), standIn.getTrack(), filled.get(standIn.getPlace()));
      other.setCandidate(standIns[standIn.getIndex()]);
      cast.add(other);
    }
    SessionSolution other =
        new SessionSolution(solution.getFacts(), filled, cast, solution.getWeights());
    other.setFence(solution.getFence());
    return other;
  }

  /** The supersets of a solution; one with a hole keeps what it has. */
  public static List<Superset> supersets(SessionSolution solution) {
    SessionFacts facts = solution.getFacts();
    return IntStream.range(0, facts.supersets())
        .mapToObj(
            superset ->
                new Superset(
                    superset + 1,
                    solution.getPlaces().stream()
                        .filter(
                            place ->
                                place.getSuperset() == superset && place.getCandidate() != null)
                        .map(place -> place.getCandidate().exercise())
                        .toList()))
        .toList();
  }

  /** The modifications of a solution by track, each where it is needed: by its first place. */
  public static List<Map<At, Exercise>> modifications(SessionSolution solution) {
    List<Map<At, Exercise>> modifications = new ArrayList<>();
    for (int track = 0; track < solution.getFacts().tracks(); track++) {
      modifications.add(new LinkedHashMap<>());
    }
    List<Place> places = solution.getPlaces();
    for (StandIn standIn : solution.getStandIns()) {
      Place place = places.get(standIn.getPlace());
      Candidate main = place.getCandidate();
      if (standIn.getCandidate() != null && main != null && main.isUnsuited(standIn.getTrack())) {
        modifications
            .get(standIn.getTrack())
            .put(at(places, place), standIn.getCandidate().exercise());
      }
    }
    return modifications;
  }

  /** Where the supersets have it, which close up over holes. */
  private static At at(List<Place> places, Place place) {
    int first = place.getIndex() - place.getPosition();
    int filled =
        (int)
            places.subList(first, place.getIndex()).stream()
                .filter(earlier -> earlier.getCandidate() != null)
                .count();
    return new At(place.getSuperset() + 1, filled);
  }

  /**
   * The candidate that a wish to keep puts in a place; a unilateral one takes the whole superset.
   */
  private static Candidate kept(SessionFacts facts, int superset, int position) {
    for (Keep keep : facts.problem().keep()) {
      Candidate candidate = facts.candidate(keep.exercise()).orElseThrow();
      if (keep.at().superset() == superset + 1
          && (keep.at().position() == position
              || candidate.unilateral() && facts.perSuperset() == 2)) {
        return candidate;
      }
    }
    return null;
  }
}

package counterset.planning;

import ai.timefold.solver.core.api.domain.solution.ConstraintWeightOverrides;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Session;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Turns sessions into solutions and back. */
public final class SessionSolutions {

  private SessionSolutions() {}

  /** A solution with nothing in it but the exercises that the coach keeps, which are pinned. */
  public static SessionSolution empty(
      SessionFacts facts, Map<String, HardMediumSoftScore> weights) {
    List<Place> places = new ArrayList<>();
    for (int superset = 0; superset < facts.supersets(); superset++) {
      for (int position = 0; position < facts.perSuperset(); position++) {
        Candidate kept = kept(facts, superset, position);
        places.add(new Place(places.size(), superset, position, kept != null, kept));
      }
    }
    return new SessionSolution(facts, places, ConstraintWeightOverrides.of(weights));
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
    return solution;
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

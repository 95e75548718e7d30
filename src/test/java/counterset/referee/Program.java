package counterset.referee;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import counterset.planning.constraints.SessionConstraint;
import counterset.planning.scoring.SearchScoreCalculator;
import counterset.score.Candidate;
import counterset.score.SessionFacts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The program's own score of sessions that are filled place by place. */
final class Program {

  private final SessionSolution solution;
  private final SearchScoreCalculator calculator = new SearchScoreCalculator();

  /**
   * An empty session.
   *
   * @param exercises that may stand in a place
   */
  Program(Problem problem, Catalogue catalogue, List<Exercise> exercises, int supersets) {
    Map<String, HardMediumSoftScore> weights = new LinkedHashMap<>();
    for (SessionConstraint constraint : SessionConstraint.values()) {
      weights.put(constraint.id(), constraint.points(constraint.weight(problem)));
    }
    solution =
        SessionSolutions.empty(new SessionFacts(problem, catalogue, exercises, supersets), weights);
    solution.getPlaces().forEach(place -> place.setCandidate(null));
  }

  List<Candidate> candidates() {
    return solution.getFacts().candidates();
  }

  List<Place> places() {
    return solution.getPlaces();
  }

  HardMediumSoftScore score() {
    return calculator.calculateScore(solution);
  }

  /** What stands where, by superset and position, null for a hole. */
  List<List<Exercise>> session() {
    int perSuperset = solution.getFacts().perSuperset();
    List<List<Exercise>> session = new ArrayList<>();
    for (Place place : places()) {
      if (place.getIndex() % perSuperset == 0) {
        session.add(new ArrayList<>());
      }
      Candidate candidate = place.getCandidate();
      session.get(session.size() - 1).add(candidate == null ? null : candidate.exercise());
    }
    return session;
  }
}

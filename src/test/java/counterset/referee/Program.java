package counterset.referee;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.score.Candidate;
import counterset.score.SessionFacts;
import counterset.score.SessionScore;
import java.util.ArrayList;
import java.util.List;

/** The program's own score of sessions that are filled place by place. */
final class Program {

  private final SessionFacts facts;
  private final Candidate[] places;
  private final SessionScore score;

  /**
   * An empty session.
   *
   * @param exercises that may stand in a place
   */
  Program(Problem problem, Catalogue catalogue, List<Exercise> exercises, int supersets) {
    facts = new SessionFacts(problem, catalogue, exercises, supersets);
    places = new Candidate[supersets * facts.perSuperset()];
    score = new SessionScore(facts);
  }

  List<Candidate> candidates() {
    return facts.candidates();
  }

  /** What stands in each place, to be filled; null for nothing. */
  Candidate[] places() {
    return places;
  }

  /** Puts what stands where, by superset and position, null for a hole. */
  Program fill(List<List<Exercise>> session) {
    int place = 0;
    for (List<Exercise> superset : session) {
      for (Exercise exercise : superset) {
        places[place++] = exercise == null ? null : facts.candidate(exercise.id()).orElseThrow();
      }
    }
    return this;
  }

  HardMediumSoftScore score() {
    score.compute(places);
    return HardMediumSoftScore.of(score.hard(), score.medium(), score.soft());
  }

  /** What stands where, by superset and position, null for a hole. */
  List<List<Exercise>> session() {
    List<List<Exercise>> session = new ArrayList<>();
    for (int place = 0; place < places.length; place++) {
      if (place % facts.perSuperset() == 0) {
        session.add(new ArrayList<>());
      }
      Candidate candidate = places[place];
      session.get(session.size() - 1).add(candidate == null ? null : candidate.exercise());
    }
    return session;
  }
}

package counterset.referee;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.planning.Candidate;
import counterset.planning.SessionFacts;
import counterset.score.SessionScore;
import java.util.ArrayList;
import java.util.List;

/** The program's own score of sessions that are filled place by place. */
final class Program {

  private final SessionFacts facts;
  private final SessionScore score;

  /** By place, null where there is none. */
  final Candidate[] places;

  /**
   * An empty session.
   *
   * @param exercises that may stand in a place
   */
  Program(Problem problem, Catalogue catalogue, List<Exercise> exercises, int supersets) {
    facts = new SessionFacts(problem, catalogue, exercises, supersets);
    score = new SessionScore(facts);
    places = new Candidate[supersets * facts.perSuperset()];
  }

  List<Candidate> candidates() {
    return facts.candidates();
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
      session.get(session.size() - 1).add(places[place] == null ? null : places[place].exercise());
    }
    return session;
  }
}

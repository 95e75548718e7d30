package counterset.planning.scoring;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;
import counterset.planning.Candidate;
import counterset.planning.Place;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import java.util.List;

/** Lets {@link SearchScore} drive the solver, which makes a calculator for each of its threads. */
public final class SearchScoreCalculator
    implements EasyScoreCalculator<SessionSolution, HardMediumSoftScore> {

  private SessionFacts facts;
  private SearchScore score;
  private Candidate[] candidates;

  @Override
  public HardMediumSoftScore calculateScore(SessionSolution solution) {
    if (facts != solution.getFacts()) {
      facts = solution.getFacts();
      score = new SearchScore(facts);
      candidates = new Candidate[solution.getPlaces().size()];
    }
    List<Place> places = solution.getPlaces();
    for (int i = 0; i < candidates.length; i++) {
      candidates[i] = places.get(i).getCandidate();
    }
    score.compute(candidates);
    return HardMediumSoftScore.of(score.hard(), score.medium(), score.soft());
  }
}

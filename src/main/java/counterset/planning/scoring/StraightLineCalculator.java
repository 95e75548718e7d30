package counterset.planning.scoring;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;
import counterset.planning.Candidate;
import counterset.planning.Place;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import java.util.List;

/** Drives the search: the score of a solution in one straight pass. The solver makes one for each of its threads. */
public final class StraightLineCalculator implements EasyScoreCalculator<SessionSolution, HardMediumSoftScore> {

  private SessionFacts facts;
  private StraightLine line;
  private ScoreSum sum;
  private Candidate[] candidates;

  @Override
  public HardMediumSoftScore calculateScore(SessionSolution solution) {
    if (facts != solution.getFacts()) {
      facts = solution.getFacts();
      line = new StraightLine(facts);
      sum = new ScoreSum(facts.problem());
      candidates = new Candidate[solution.getPlaces().size()];
    }
    List<Place> places = solution.getPlaces();
    for (int i = 0; i < candidates.length; i++) {
      candidates[i] = places.get(i).getCandidate();
    }
    sum.reset();
    line.score(candidates, sum);
    return sum.score();
  }
}

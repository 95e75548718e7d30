package counterset.planning.scoring;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;
import counterset.planning.Candidate;
import counterset.planning.Place;
import counterset.planning.SessionFacts;
import counterset.planning.SessionSolution;
import counterset.planning.StandIn;
import java.util.List;

/** Lets {@link SearchScore} drive the solver, which makes a calculator for each of its threads. */
public final class SearchScoreCalculator
    implements EasyScoreCalculator<SessionSolution, HardMediumSoftScore> {

  private SessionFacts facts;
  private SearchScore score;
  private TrackScore trackScore;
  private Candidate[] candidates;
  private Candidate[] standIns;

  @Override
  public HardMediumSoftScore calculateScore(SessionSolution solution) {
    if (facts != solution.getFacts()) {
      facts = solution.getFacts();
      score = new SearchScore(facts);
      trackScore = new TrackScore(facts);
      candidates = new Candidate[solution.getPlaces().size()];
      standIns = new Candidate[solution.getStandIns().size()];
    }
    List<Place> places = solution.getPlaces();
    for (int i = 0; i < candidates.length; i++) {
      candidates[i] = places.get(i).getCandidate();
    }
    score.compute(candidates);
    if (standIns.length == 0) {
      return HardMediumSoftScore.of(score.hard(), score.medium(), score.soft());
    }
    List<StandIn> entities = solution.getStandIns();
    for (int i = 0; i < standIns.length; i++) {
      standIns[i] = entities.get(i).getCandidate();
    }
    trackScore.compute(candidates, standIns);
    return HardMediumSoftScore.of(
        score.hard() + trackScore.hard(),
        score.medium() + trackScore.medium(),
        score.soft() + trackScore.soft());
  }
}

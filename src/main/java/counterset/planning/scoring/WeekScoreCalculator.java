package counterset.planning.scoring;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;
import counterset.planning.Candidate;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import counterset.planning.WeekDay;
import counterset.planning.WeekFacts;
import counterset.planning.WeekSolution;
import counterset.planning.WeekSolutions;
import java.util.ArrayList;
import java.util.List;

/** Lets {@link SearchScore} and {@link WeekScore} drive the solver of a week. */
public final class WeekScoreCalculator
    implements EasyScoreCalculator<WeekSolution, HardMediumSoftScore> {

  private final List<SearchScoreCalculator> sessions = new ArrayList<>();
  private WeekFacts facts;

  @Override
  public HardMediumSoftScore calculateScore(WeekSolution week) {
    if (facts != week.getFacts()) {
      facts = week.getFacts();
      sessions.clear();
      facts.days().forEach(day -> sessions.add(new SearchScoreCalculator()));
    }
    WeekScore between = new WeekScore(facts);
    HardMediumSoftScore sum = HardMediumSoftScore.ZERO;
    for (WeekDay day : facts.days()) {
      SessionSolution session = WeekSolutions.session(week, day);
      sum = sum.add(sessions.get(day.index()).calculateScore(session));
      between.add(
          day, session.getPlaces().stream().map(Place::getCandidate).toArray(Candidate[]::new));
    }
    return sum.add(HardMediumSoftScore.of(between.hard(), between.medium(), between.soft()));
  }
}

package counterset.planning;

import ai.timefold.solver.core.api.domain.solution.ConstraintWeightOverrides;
import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Puts the sessions of a week together and takes them apart. */
public final class WeekSolutions {

  private WeekSolutions() {}

  /**
   * The sessions of a week as one solution.
   *
   * @param sessions in the order of the week, each of the facts that the week has for it
   * @param weights of the constraints of the week
   */
  public static WeekSolution join(
      WeekFacts facts, List<SessionSolution> sessions, Map<String, HardMediumSoftScore> weights) {
    List<WeekPlace> places = new ArrayList<>();
    List<WeekStandIn> standIns = new ArrayList<>();
    for (WeekDay day : facts.days()) {
      SessionSolution session = sessions.get(day.index());
      session.getPlaces().forEach(place -> places.add(new WeekPlace(places.size(), day, place)));
      session
          .getStandIns()
          .forEach(standIn -> standIns.add(new WeekStandIn(standIns.size(), day, standIn)));
    }
    return new WeekSolution(facts, places, standIns, ConstraintWeightOverrides.of(weights));
  }

  /** One session of a week by itself. */
  public static SessionSolution session(WeekSolution week, WeekDay day) {
    List<Place> places =
        week.getPlaces().stream()
            .filter(place -> place.getDay() == day)
            .map(WeekPlace::alone)
            .toList();
    List<StandIn> standIns = new ArrayList<>();
    for (WeekStandIn standIn : week.getStandIns()) {
      if (standIn.getDay() == day) {
        int place = standIn.getStandIn() % places.size();
        StandIn alone =
            new StandIn(
                standIn.getStandIn(), standIn.getStandIn() / places.size(), places.get(place));
        alone.setCandidate(standIn.getCandidate());
        standIns.add(alone);
      }
    }
    return new SessionSolution(day.facts(), places, standIns, ConstraintWeightOverrides.none());
  }
}

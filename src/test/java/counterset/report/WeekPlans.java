package counterset.report;

import counterset.model.Plan;
import counterset.model.SolverNote;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.model.WeekProblem.SetRange;
import counterset.model.WeekSession;
import counterset.search.WeekPlanner;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A week of sessions written by hand over a fixed catalogue. */
public final class WeekPlans {

  private WeekPlans() {}

  /** Legs on neighbouring days: too short a recovery, repeated exercises, too many sets. */
  public static WeekPlan legsTwice(boolean recoveryIsRule) {
    List<Plan> plans = List.of(Plans.legs(), Plans.legs(), Plans.upperRounds());
    DayOfWeek[] days = {DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.FRIDAY};
    List<WeekSession> sessions = new ArrayList<>();
    for (int i = 0; i < days.length; i++) {
      sessions.add(new WeekSession(days[i], plans.get(i).problem()));
    }
    WeekProblem problem =
        new WeekProblem(
            "Legs twice",
            sessions,
            List.of(),
            Map.of("calves", new SetRange(6, 10)),
            recoveryIsRule,
            Map.of(),
            1);
    return new WeekPlanner(Plans.CATALOGUE, "test")
        .score(
            problem,
            plans.stream().map(Plan::session).toList(),
            new SolverNote(1, "none", "test", 0, true));
  }
}

package counterset.search;

import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.Superset;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.model.WeekSession;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Changes some days of a planned week and keeps the others. */
public final class KeptDays {

  private KeptDays() {}

  /**
   * A week in which every exercise of the other days is kept where it was planned. Days that the
   * plan does not have are planned anew. The modifications of tracks are chosen again.
   *
   * @param changed the days that may become another session
   */
  public static WeekProblem keeping(WeekProblem problem, WeekPlan planned, Set<DayOfWeek> changed) {
    return problem.withSessions(
        problem.sessions().stream()
            .map(session -> changed.contains(session.day()) ? session : kept(session, planned))
            .toList());
  }

  private static WeekSession kept(WeekSession session, WeekPlan planned) {
    List<WeekSession> days = planned.problem().sessions();
    for (int i = 0; i < days.size(); i++) {
      if (days.get(i).day() == session.day()) {
        Session done = planned.plans().get(i).session();
        return new WeekSession(session.day(), keeping(session.problem(), done));
      }
    }
    return session;
  }

  private static Problem keeping(Problem problem, Session session) {
    ProblemDraft draft = new ProblemDraft(problem);
    draft.keep.clear();
    draft.keep.addAll(keeps(session));
    return draft.problem();
  }

  private static List<Keep> keeps(Session session) {
    List<Keep> keeps = new ArrayList<>();
    for (Superset superset : session.supersets()) {
      List<Exercise> exercises = superset.exercises();
      for (int position = 0; position < exercises.size(); position++) {
        keeps.add(new Keep(new At(superset.number(), position), exercises.get(position).id()));
      }
    }
    return keeps;
  }
}

package counterset.intake;

import counterset.explain.WeekWords;
import counterset.json.BadRequest;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import counterset.model.WeekSession;
import counterset.problem.PlanFile;
import counterset.problem.WeekPlanFile;
import counterset.search.KeptDays;
import counterset.search.WeekPlanner;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;

/** Some days of a planned week, planned anew; all others stay exactly as they are. */
public final class WeekRedo {

  private final WeekProblem problem;
  private final List<Session> before;
  private final List<PlanFile> files;
  private final Set<DayOfWeek> days;
  private final String version;

  private WeekRedo(
      WeekProblem problem,
      List<Session> before,
      List<PlanFile> files,
      Set<DayOfWeek> days,
      String version) {
    this.problem = problem;
    this.before = before;
    this.files = files;
    this.days = days;
    this.version = version;
  }

  /**
   * Reads a planned week.
   *
   * @param days to plan anew
   * @param seed of these days, if it is to be another
   * @param version of this program
   */
  public static WeekRedo read(
      Path file, Set<DayOfWeek> days, OptionalLong seed, Catalogue catalogue, String version) {
    WeekPlanFile week = Readers.weekPlans(catalogue).read(file);
    checkDays(week.problem(), days);
    checkKept(week, days, file);
    List<Session> before =
        week.plans().stream()
            .map(plan -> GivenPlan.of(plan, catalogue, version).plan().session())
            .toList();
    WeekProblem problem = week.problem();
    if (seed.isPresent()) {
      List<WeekSession> sessions = new ArrayList<>();
      for (WeekSession session : problem.sessions()) {
        sessions.add(
            days.contains(session.day())
                ? new WeekSession(session.day(), session.problem().withSeed(seed.getAsLong()))
                : session);
      }
      problem = problem.withSessions(sessions).withOwnSeed(seed.getAsLong());
    }
    return new WeekRedo(problem, before, week.plans(), days, version);
  }

  private static void checkDays(WeekProblem week, Set<DayOfWeek> days) {
    List<DayOfWeek> planned = week.sessions().stream().map(WeekSession::day).toList();
    List<String> faults =
        days.stream()
            .filter(day -> !planned.contains(day))
            .map(
                day ->
                    "--redo ("
                        + WeekWords.day(day)
                        + ") is no day of this week. Its days: "
                        + planned.stream().map(WeekWords::day).collect(Collectors.joining(", "))
                        + ".")
            .toList();
    if (!faults.isEmpty()) {
      throw new BadRequest(faults);
    }
  }

  /** A day that stays must have been planned for what the week asks of it. */
  private static void checkKept(WeekPlanFile week, Set<DayOfWeek> days, Path file) {
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < week.plans().size(); i++) {
      WeekSession session = week.problem().sessions().get(i);
      if (!days.contains(session.day())
          && !week.plans().get(i).problem().equals(session.problem())) {
        faults.add(
            file
                + " /problem/sessions/"
                + i
                + ": "
                + WeekWords.day(session.day())
                + " was planned for another problem (/sessions/"
                + i
                + "/plan/problem). Plan it anew too, or undo the change.");
      }
    }
    if (!faults.isEmpty()) {
      throw new BadRequest(faults);
    }
  }

  /** What the search is asked: the days that stay are kept place by place. */
  public WeekProblem pinned(WeekPlanner planner) {
    List<WeekSession> sessions = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      sessions.add(new WeekSession(problem.sessions().get(i).day(), files.get(i).problem()));
    }
    SolverNote note = new SolverNote(problem.seed(), "none", version, 0, true);
    WeekPlan planned = planner.score(problem.withSessions(sessions), before, note);
    return KeptDays.keeping(problem, planned, days);
  }

  /** The week with the days that stay as they were, warm-up and modifications included. */
  public WeekPlan joined(WeekPlan found, WeekPlanner planner) {
    List<Session> sessions = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      boolean anew = days.contains(problem.sessions().get(i).day());
      sessions.add(anew ? found.plans().get(i).session() : before.get(i));
    }
    WeekPlan joined = planner.score(problem, sessions, found.solver());
    List<Plan> plans = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      Plan plan = joined.plans().get(i);
      boolean anew = days.contains(problem.sessions().get(i).day());
      plans.add(anew ? plan : files.get(i).solver().map(plan::withSolver).orElse(plan));
    }
    return new WeekPlan(
        problem, plans, joined.score(), joined.matches(), joined.sets(), joined.solver());
  }

  /** Whether nothing came out otherwise than before. */
  public boolean changesNothing(WeekPlan week) {
    return before.equals(week.plans().stream().map(plan -> plan.session()).toList());
  }
}

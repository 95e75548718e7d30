package counterset.solve;

import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.model.Problem;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.WeekPlan;
import counterset.model.WeekPlan.WeekMatch;
import counterset.model.WeekPlan.WeekSets;
import counterset.model.WeekProblem;
import counterset.planning.SessionSolution;
import counterset.planning.SessionSolutions;
import counterset.planning.WeekDay;
import counterset.planning.WeekSolution;
import counterset.planning.WeekSolutions;
import counterset.planning.constraints.SessionConstraint.Level;
import counterset.planning.constraints.WeekConstraint;
import counterset.planning.scoring.WeekLedger;
import java.util.ArrayList;
import java.util.List;

/** Puts together all that follows from the sessions of a week. */
final class WeekAssembly {

  private final WeekProblem problem;
  private final Catalogue catalogue;

  WeekAssembly(WeekProblem problem, Catalogue catalogue) {
    this.problem = problem;
    this.catalogue = catalogue;
  }

  /** A week whose sessions have no warm-up and cool-down yet. */
  WeekPlan plan(WeekSolution week, SolverNote note) {
    List<Session> sessions = new ArrayList<>();
    for (WeekDay day : week.getFacts().days()) {
      SessionSolution solution = WeekSolutions.session(week, day);
      sessions.add(
          new Surroundings(day.facts().problem(), catalogue)
              .around(
                  SessionSolutions.supersets(solution), SessionSolutions.modifications(solution)));
    }
    return plan(week, sessions, note);
  }

  /** A week of such sessions. */
  WeekPlan plan(WeekSolution week, List<Session> sessions, SolverNote note) {
    List<Plan> plans = new ArrayList<>();
    for (WeekDay day : week.getFacts().days()) {
      Problem asked = day.facts().problem();
      plans.add(
          new Assembly(asked, catalogue)
              .plan(sessions.get(day.index()), WeekSolutions.session(week, day), note));
    }
    List<WeekMatch> matches = WeekLedger.of(week).stream().map(this::match).toList();
    return new WeekPlan(problem, plans, score(plans, matches), matches, sets(week), note);
  }

  private WeekMatch match(WeekLedger.Entry entry) {
    return new WeekMatch(
        entry.constraint().id(),
        entry.amount(),
        -entry.amount() * entry.constraint().weight(problem),
        entry.sessions(),
        entry.subject());
  }

  private PlanScore score(List<Plan> plans, List<WeekMatch> matches) {
    int[] sums = new int[Level.values().length];
    for (Plan plan : plans) {
      sums[Level.HARD.ordinal()] += plan.score().hard();
      sums[Level.MEDIUM.ordinal()] += plan.score().medium();
      sums[Level.SOFT.ordinal()] += plan.score().soft();
    }
    List<PlanScore.Line> lines = new ArrayList<>();
    for (WeekConstraint constraint : WeekConstraint.values()) {
      List<WeekMatch> own =
          matches.stream().filter(match -> match.constraint().equals(constraint.id())).toList();
      int score = own.stream().mapToInt(WeekMatch::points).sum();
      sums[constraint.level(problem).ordinal()] += score;
      lines.add(
          new PlanScore.Line(
              constraint.id(),
              constraint.level(problem).id(),
              constraint.weight(problem),
              own.size(),
              score,
              constraint.sentence()));
    }
    return new PlanScore(
        sums[Level.HARD.ordinal()],
        sums[Level.MEDIUM.ordinal()],
        sums[Level.SOFT.ordinal()],
        lines);
  }

  private static List<WeekSets> sets(WeekSolution week) {
    return week.getFacts().targets().stream()
        .map(
            target ->
                new WeekSets(
                    target.muscle(),
                    WeekLedger.halfSetsByDay(week, target),
                    WeekLedger.days(week, target),
                    target.range()))
        .toList();
  }
}

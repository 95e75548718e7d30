package counterset.search;

import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.WeekPlan;
import counterset.model.WeekPlan.WeekMatch;
import counterset.model.WeekPlan.WeekSets;
import counterset.model.WeekProblem;
import counterset.score.Candidate;
import counterset.score.Constraints;
import counterset.score.DayConstraint;
import counterset.score.Level;
import counterset.score.Lineup;
import counterset.score.Rule;
import counterset.score.WeekFacts;
import counterset.score.WeekLedger;
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
  WeekPlan plan(WeekFacts facts, List<Lineup> week, SolverNote note) {
    List<Session> sessions = new ArrayList<>();
    for (Lineup day : week) {
      sessions.add(
          new Surroundings(day.facts().problem(), catalogue)
              .around(day.supersets(), day.modifications()));
    }
    return plan(facts, week, sessions, note);
  }

  /** A week of such sessions. */
  WeekPlan plan(WeekFacts facts, List<Lineup> week, List<Session> sessions, SolverNote note) {
    List<Plan> plans = new ArrayList<>();
    for (Lineup day : week) {
      plans.add(
          new Assembly(day.facts().problem(), catalogue)
              .plan(sessions.get(plans.size()), day, note));
    }
    List<Candidate[]> places = week.stream().map(Lineup::places).toList();
    List<WeekMatch> matches =
        WeekLedger.of(facts, places).stream().map(WeekAssembly::match).toList();
    return new WeekPlan(problem, plans, score(plans, matches), matches, sets(facts, places), note);
  }

  private static WeekMatch match(WeekLedger.Entry entry) {
    return new WeekMatch(
        entry.constraint().id(), entry.amount(), entry.points(), entry.sessions(), entry.subject());
  }

  private PlanScore score(List<Plan> plans, List<WeekMatch> matches) {
    int[] sums = new int[Level.values().length];
    for (Plan plan : plans) {
      sums[Level.HARD.ordinal()] += plan.score().hard();
      sums[Level.MEDIUM.ordinal()] += plan.score().medium();
      sums[Level.SOFT.ordinal()] += plan.score().soft();
    }
    List<PlanScore.Line> lines = new ArrayList<>();
    for (DayConstraint constraint : Constraints.OF_WEEKS) {
      Rule rule = constraint.rule(problem);
      List<WeekMatch> own =
          matches.stream().filter(match -> match.constraint().equals(constraint.id())).toList();
      int score = own.stream().mapToInt(WeekMatch::points).sum();
      sums[rule.level().ordinal()] += score;
      lines.add(
          new PlanScore.Line(
              constraint.id(),
              rule.level().id(),
              -rule.perUnit(),
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

  private static List<WeekSets> sets(WeekFacts facts, List<Candidate[]> week) {
    return facts.targets().stream()
        .map(
            target ->
                new WeekSets(
                    target.muscle(),
                    WeekLedger.halfSetsByDay(facts, week, target.muscle()),
                    WeekLedger.days(facts, week, target.muscle()),
                    target.range()))
        .toList();
  }
}

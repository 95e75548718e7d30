package counterset.report.text;

import counterset.explain.BlockWords;
import counterset.explain.ScoreWords;
import counterset.model.English;
import counterset.model.Plan;
import counterset.model.PlanScore;
import counterset.model.TargetCoverage;
import counterset.report.Times;

/** A plan on one line, for lists of many. */
public final class SessionLine {

  private SessionLine() {}

  /**
   * {@code 19:50 of 20:00, 8 supersets, 6 of 6 targets, all rules kept, all wishes met, -27 points:
   * Lunch-break legs}.
   */
  public static String of(Plan plan) {
    long covered = plan.coverage().stream().filter(TargetCoverage::isCovered).count();
    PlanScore score = plan.score();
    String worth = ScoreWords.sentence(score.hard(), score.medium(), score.soft());
    return Times.clock(plan.totals().seconds())
        + " of "
        + Times.clock(60 * plan.problem().minutes())
        + ", "
        + English.count(plan.totals().supersets(), BlockWords.name(plan))
        + ", "
        + covered
        + " of "
        + English.count(plan.coverage().size(), "target")
        + ", "
        + (score.feasible() ? "" : "NOT FEASIBLE, ")
        + worth
        + (plan.solver().complete() ? "" : ", interrupted")
        + ": "
        + plan.problem().title().replaceAll("\\p{Cntrl}", " ");
  }
}

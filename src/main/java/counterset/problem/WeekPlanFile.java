package counterset.problem;

import counterset.model.WeekProblem;
import java.util.List;

/**
 * The decisions of a week plan, whoever wrote it.
 *
 * @param plans of the sessions, in the order of the problem; each has the problem of its session
 */
public record WeekPlanFile(WeekProblem problem, List<PlanFile> plans) {

  public WeekPlanFile {
    plans = List.copyOf(plans);
  }
}

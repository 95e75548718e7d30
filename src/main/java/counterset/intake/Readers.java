package counterset.intake;

import counterset.model.Catalogue;
import counterset.problem.PlanFileReader;
import counterset.problem.ProblemReader;
import counterset.problem.WeekPlanReader;
import counterset.problem.WeekReader;
import counterset.score.Constraint;
import counterset.score.Constraints;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Readers of files whose weights may name the constraints that there are. */
public final class Readers {

  private Readers() {}

  /** Of problems of one session. */
  public static ProblemReader problems(Catalogue catalogue) {
    return new ProblemReader(catalogue, ids(Constraints.OF_SESSIONS));
  }

  /** Of problems of a week. */
  public static WeekReader weeks(Catalogue catalogue) {
    return new WeekReader(problems(catalogue), catalogue, ids(Constraints.OF_WEEKS));
  }

  /** Of plans of one session. */
  public static PlanFileReader plans(Catalogue catalogue) {
    return new PlanFileReader(problems(catalogue), catalogue);
  }

  /** Of planned weeks. */
  public static WeekPlanReader weekPlans(Catalogue catalogue) {
    return new WeekPlanReader(weeks(catalogue), plans(catalogue));
  }

  private static Set<String> ids(List<? extends Constraint> constraints) {
    return constraints.stream()
        .map(Constraint::id)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}

package counterset.intake;

import counterset.model.Catalogue;
import counterset.model.Identified;
import counterset.planning.constraints.SessionConstraint;
import counterset.planning.constraints.WeekConstraint;
import counterset.problem.PlanFileReader;
import counterset.problem.ProblemReader;
import counterset.problem.WeekPlanReader;
import counterset.problem.WeekReader;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;

/** Readers of files whose weights may name the constraints that there are. */
public final class Readers {

  private Readers() {}

  /** Of problems of one session. */
  public static ProblemReader problems(Catalogue catalogue) {
    return new ProblemReader(catalogue, ids(SessionConstraint.values()));
  }

  /** Of problems of a week. */
  public static WeekReader weeks(Catalogue catalogue) {
    return new WeekReader(problems(catalogue), catalogue, ids(WeekConstraint.values()));
  }

  /** Of plans of one session. */
  public static PlanFileReader plans(Catalogue catalogue) {
    return new PlanFileReader(problems(catalogue), catalogue);
  }

  /** Of planned weeks. */
  public static WeekPlanReader weekPlans(Catalogue catalogue) {
    return new WeekPlanReader(weeks(catalogue), plans(catalogue));
  }

  private static Set<String> ids(Identified[] constraints) {
    return Arrays.stream(constraints)
        .map(Identified::id)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}

package counterset.referee;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.bound.ScoreBound;
import counterset.model.PlanScore;
import counterset.referee.Verdict.Status;
import counterset.search.Effort;
import counterset.search.Limit;
import counterset.search.SessionPlanner;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * With standard effort, if not quickly, the program finds the proven optimum of every small
 * problem, and its limit is no lower, whatever plan it is asked about.
 */
class OptimalityTest {

  static List<SmallProblem> problems() {
    return SmallProblems.all();
  }

  @ParameterizedTest
  @MethodSource("problems")
  void theProgramReachesTheProvenOptimum(SmallProblem small) {
    Verdict verdict =
        new Referee(small.catalogue()).judge(small.problem(), new Limits(60, 1, true));
    assertThat(verdict.status()).isEqualTo(Status.PROVEN);

    PlanScore found = plan(small, Effort.QUICK);
    if (found.soft() < verdict.soft() || found.medium() < verdict.medium()) {
      found = plan(small, Effort.STANDARD);
    }

    assertThat(List.of(found.hard(), found.medium()))
        .as("hard, medium; proven: %s", verdict.session())
        .containsExactly(0, (int) verdict.medium());
    assertThat(found.soft())
        .as("soft; proven: %s", verdict.session())
        .isEqualTo((int) verdict.soft());
    for (int worse : new int[] {0, 1, 40}) {
      OptionalInt limit =
          ScoreBound.of(small.problem(), small.catalogue())
              .upperLimit((int) verdict.medium(), (int) verdict.soft() - worse);
      assertThat(limit).isPresent();
      assertThat(limit.getAsInt())
          .as("limit of a plan that is %d points worse than the optimum", worse)
          .isGreaterThanOrEqualTo((int) verdict.soft());
    }
  }

  private static PlanScore plan(SmallProblem small, Effort effort) {
    return new SessionPlanner(small.catalogue(), "test")
        .plan(small.problem(), Limit.of(effort))
        .score();
  }
}

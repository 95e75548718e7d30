package counterset.referee;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import counterset.referee.Verdict.Status;
import counterset.score.Candidate;
import counterset.score.ExerciseFilter;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A second referee, which tries every session, holes anywhere included. */
class BruteForceTest {

  static List<SmallProblem> problems() {
    return TinyProblems.all();
  }

  private static HardMediumSoftScore best(Program program, int place) {
    if (place == program.places().length) {
      return program.score();
    }
    program.places()[place] = null;
    HardMediumSoftScore best = best(program, place + 1);
    for (Candidate candidate : program.candidates()) {
      program.places()[place] = candidate;
      HardMediumSoftScore score = best(program, place + 1);
      best = score.compareTo(best) > 0 ? score : best;
    }
    return best;
  }

  @ParameterizedTest
  @MethodSource("problems")
  void agreesOnTheOptimum(SmallProblem tiny) {
    Program program =
        new Program(
            tiny.problem(),
            tiny.catalogue(),
            new ExerciseFilter(tiny.problem(), tiny.catalogue()).main(),
            SessionModel.supersetsThatFit(tiny.problem()));
    HardMediumSoftScore best = best(program, 0);

    Verdict verdict = new Referee(tiny.catalogue()).judge(tiny.problem(), new Limits(60, 1, true));

    if (best.hardScore() < 0) {
      assertThat(verdict.status()).isEqualTo(Status.INFEASIBLE);
    } else {
      assertThat(verdict.status()).isEqualTo(Status.PROVEN);
      assertThat(HardMediumSoftScore.of(0, (int) verdict.medium(), (int) verdict.soft()))
          .isEqualTo(best);
    }
  }
}

package counterset.referee;

import static counterset.referee.SmallProblems.clock;
import static counterset.referee.SmallProblems.whole;
import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import counterset.fixture.Problems;
import counterset.model.Problem;
import counterset.score.Candidate;
import counterset.score.ExerciseFilter;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What tires for many intervals running, seldom drawn at random, costs the same on both sides. */
class RunsTest {

  private static final int SESSIONS = 24;
  private static final int SUPERSETS = 8;

  @ParameterizedTest
  @CsvSource({
    "gripRun, 1, 1",
    "gripRun, 1, 2",
    "backRun, 2, 1",
    "backRun, 2, 3",
    "shoulderRun, 4, 2",
    "shoulderRun, 4, 3"
  })
  void theRefereeChargesForRunsAsTheProgramDoes(String constraint, int fatigue, int perSuperset) {
    int units = 0;
    for (int seed = 1; seed <= SESSIONS; seed++) {
      Problems problems =
          whole(60, "dumbbell", "kettlebell", "pull-up-bar")
              .level(3)
              .clock(clock(40, 20, 60, perSuperset, 1));
      Program free = draw(problems.weighing(Map.of(constraint, 0)).problem(), fatigue, seed);
      Problem problem = problems.weighing(Map.of(constraint, 1)).problem();
      HardMediumSoftScore score = program(problem).fill(free.session()).score();
      units += free.score().softScore() - score.softScore();

      Verdict verdict = new Referee(SmallProblems.WHOLE).score(problem, free.session());

      assertThat(HardMediumSoftScore.of(0, (int) verdict.medium(), (int) verdict.soft()))
          .as("seed %d, %s", seed, free.session())
          .isEqualTo(score);
    }
    assertThat(units).as("intervals beyond the third").isPositive();
  }

  /** A session of exercises most of which tire the same. */
  private static Program draw(Problem problem, int fatigue, int seed) {
    Program program = program(problem);
    Random random = new Random(seed);
    List<Candidate> tiring =
        program.candidates().stream()
            .filter(c -> (c.merit().fatigue() & fatigue) != 0 || random.nextInt(10) == 0)
            .toList();
    int perSuperset = problem.clock().perSuperset();
    for (int superset = 0; superset < SUPERSETS; superset++) {
      RefereeTest.fill(program, tiring, superset * perSuperset, perSuperset, random);
    }
    return program;
  }

  private static Program program(Problem problem) {
    return new Program(
        problem,
        SmallProblems.WHOLE,
        new ExerciseFilter(problem, SmallProblems.WHOLE).main(),
        SessionModel.supersetsThatFit(problem));
  }
}

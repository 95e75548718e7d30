package counterset.referee;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import counterset.fixture.Problems;
import counterset.fixture.RandomSessions;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Problem;
import counterset.referee.Verdict.Status;
import counterset.score.Candidate;
import counterset.score.ExerciseFilter;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The referee's objective is the program's score. */
class RefereeTest {

  private static final int SESSIONS = 160;
  private static final int TRIES = 80;

  private final Catalogue catalogue = SmallProblems.WHOLE;
  private final Referee referee = new Referee(catalogue);

  /** A session of the whole catalogue that breaks no rule, and what the program says of it. */
  private record Sample(Problem problem, List<List<Exercise>> session, HardMediumSoftScore score) {}

  private Sample sample(long seed) {
    Random random = new Random(seed);
    Problems problems = new RandomSessions(catalogue, seed).problem().keeping();
    Problem problem = problems.problem();
    int supersets = Math.min(8, SessionModel.supersetsThatFit(problem));
    Program program = program(problem);
    int perSuperset = problem.clock().perSuperset();
    for (int superset = 0; superset < supersets && !program.candidates().isEmpty(); superset++) {
      fill(program, program.candidates(), superset * perSuperset, perSuperset, random);
    }
    List<List<Exercise>> session = program.session();
    if (seed % 3 == 0 && !session.isEmpty() && session.get(0).get(0) != null) {
      Keep keep = new Keep(new At(1, 0), session.get(0).get(0).id());
      problem = problems.keeping(keep).problem();
      // What the coach keeps is never work that nobody asked for.
      program = program(problem).fill(session);
    }
    return new Sample(problem, session, program.score());
  }

  private Program program(Problem problem) {
    return new Program(
        problem,
        catalogue,
        new ExerciseFilter(problem, catalogue).main(),
        SessionModel.supersetsThatFit(problem));
  }

  /**
   * Draws exercises, now and then a hole, until the superset breaks no rule; else leaves it empty.
   */
  static void fill(
      Program program, List<Candidate> candidates, int start, int perSuperset, Random random) {
    Candidate[] places = program.places();
    for (int i = 0; i < TRIES; i++) {
      for (int place = start; place < start + perSuperset; place++) {
        boolean hole = random.nextInt(12) == 0;
        places[place] = hole ? null : candidates.get(random.nextInt(candidates.size()));
      }
      if (perSuperset == 2 && places[start] != null && places[start].unilateral()) {
        places[start + 1] = places[start];
      }
      if (program.score().hardScore() == 0) {
        return;
      }
    }
    Arrays.fill(places, start, start + perSuperset, null);
  }

  @Test
  void itsObjectiveIsTheProgramsScoreOnRandomSessions() {
    int filled = 0;
    int samples = 0;
    for (long seed = 1; samples < SESSIONS; seed++) {
      Sample sample = sample(seed);
      if (sample.score().hardScore() < 0) {
        continue; // No time for the warm-up alone.
      }
      samples++;
      filled += sample.session().stream().anyMatch(s -> !s.contains(null)) ? 1 : 0;
      Verdict verdict = referee.score(sample.problem(), sample.session());
      assertThat(verdict.status()).as("seed %d", seed).isEqualTo(Status.PROVEN);
      assertThat(HardMediumSoftScore.of(0, (int) verdict.medium(), (int) verdict.soft()))
          .as("seed %d, %s", seed, sample)
          .isEqualTo(sample.score());
      assertThat(verdict.places()).as("seed %d", seed).isEqualTo(sample.session());
    }
    assertThat(filled).as("sessions with a full superset").isGreaterThan(SESSIONS * 3 / 4);
  }

  @Test
  void itCallsASessionInfeasibleIfTheProgramSaysThatItBreaksARule() {
    int broken = 0;
    for (long seed = 1; seed <= SESSIONS; seed++) {
      Random random = new Random(seed);
      Problem problem = new RandomSessions(catalogue, seed).problem().keeping().problem();
      int supersets = SessionModel.supersetsThatFit(problem);
      Program program = program(problem);
      if (supersets == 0 || program.candidates().isEmpty()) {
        continue;
      }
      for (int place = 0; place < Math.min(4, program.places().length); place++) {
        program.places()[place] =
            program.candidates().get(random.nextInt(program.candidates().size()));
      }
      boolean breaks = program.score().hardScore() < 0;
      broken += breaks ? 1 : 0;
      assertThat(referee.score(problem, program.session()).status())
          .as("seed %d", seed)
          .isEqualTo(breaks ? Status.INFEASIBLE : Status.PROVEN);
    }
    assertThat(broken).isBetween(SESSIONS / 4, SESSIONS - 1);
  }
}

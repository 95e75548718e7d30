package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.json.Schemas;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code plan} cannot do, and what it says then. */
class PlanRefusalsTest {

  @TempDir Path folder;

  private Cli infeasible(String... args) {
    Cli plan = Cli.run(folder, args).speaksPlainly();
    assertThat(plan.status()).as(plan.toString()).isEqualTo(Exit.INFEASIBLE);
    return plan;
  }

  @Test
  void aCapInWhichNoSupersetFits() {
    Cli plan = infeasible("plan", "2 min, lower body", "--effort", "quick");
    assertThat(plan.out()).isEmpty();
    assertThat(plan.err())
        .contains("No feasible session: the shortest one with this clock takes 160 s")
        .contains("but the cap is 2 min.\n")
        .contains("What would free it: 3 min, or a clock that is 40 s shorter.\n");
  }

  @Test
  void anInfeasibleAskIsEchoedAsWell() {
    Cli plan = infeasible("plan", "2 min, lower body", "--effort", "quick");
    assertThat(plan.err()).startsWith("Read as: 2 minutes\n");
  }

  @Test
  void whatWouldFreeItDoesFreeIt() {
    assertThat(Cli.run(folder, "plan", "3 min, lower body", "--effort", "quick").status())
        .isEqualTo(Exit.DONE);
  }

  @Test
  void infeasibleAsJson() {
    Cli plan = infeasible("plan", "2 min, lower body", "--effort", "quick", "--format", "json");
    assertThat(Schemas.validate(plan.json(), "plan")).isEmpty();
    assertThat(plan.json().at("/totals/supersets").intValue()).isZero();
    assertThat(plan.err()).contains("What would free it: 3 min");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"limitations\": [\"sore-knees\"], \"equipment\": [{\"id\": \"dumbbell\"}]"
            + "| 3A: Dumbbell lateral lunge goes against sore knees | Swap it.",
        "\"equipment\": []"
            + "| 3A: Dumbbell lateral lunge needs | not among the equipment. Maybe swap it",
        "\"level\": 1, \"equipment\": [{\"id\": \"dumbbell\"}]"
            + "| 3A: Dumbbell lateral lunge is level 2, above level 1. | Maybe swap it, or raise the level.",
      })
  void aKeptExerciseAgainstAnotherWish(String wishes, String place, String remedy) {
    Cli.write(
        folder,
        "p.json",
        "{\"problem\": 1, \"minutes\": 20, \"targets\": [\"lower\"], %s, \"keep\": %s}"
            .formatted(wishes, "[{\"at\": \"3A\", \"exercise\": \"dumbbell-lateral-lunge\"}]"));
    Cli plan = infeasible("plan", "p.json", "--effort", "quick");
    assertThat(plan.out()).isEmpty();
    assertThat(plan.err())
        .startsWith("No feasible session: the best one found still breaks a rule.\n");
    assertThat(plan.err().lines())
        .as(plan.err())
        .anySatisfy(line -> assertThat(line).containsSubsequence(place, remedy));
  }

  @Test
  void nothingInTheCatalogueSuits() {
    Cli.write(
        folder,
        "p.json",
        "{\"problem\": 1, \"minutes\": 20, \"targets\": [\"biceps\"], \"level\": 1, \"exclude\":"
            + " [\"elbow-flexion\", \"pull\", \"push\", \"squat\", \"hinge\", \"lunge\","
            + " \"bridge\"]}");
    Cli plan = Cli.run(folder, "plan", "p.json", "--effort", "quick").speaksPlainly();
    assertThat(plan.status()).isIn(Exit.DONE, Exit.INFEASIBLE);
    if (plan.status() == Exit.INFEASIBLE) {
      assertThat(plan.err()).contains("No feasible session: ", "What would free it: ");
    }
  }

  @Test
  void everyFaultOfAnAskIsNamedOnItsLine() {
    Cli plan =
        Cli.run(folder, "plan", "20 min, 30 min, lower body, sore kneez, dumbels").isRefused(3);
    assertThat(plan.faults().get(0))
        .startsWith("ask, column 9: Two different durations: \"20 min\" and \"30 min\".");
    assertThat(plan.faults().get(1)).startsWith("ask, column 29: ").contains("\"sore knees\"");
    assertThat(plan.faults().get(2)).startsWith("ask, column 41: ").contains("\"dumbbells\"");
  }

  @Test
  void anAskThatForbidsWhatItKeeps() {
    Cli plan =
        Cli.run(
            folder, "plan", "20 min, lower body, dumbbells, sore knees, keep goblet squat at 3A");
    assertThat(plan.isRefused(1).err()).contains("\"Goblet squat\" is not suitable with \"sore");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "plan                                | Missing required parameter",
        "plan ''                             | The ask is empty.",
        "plan legs --effort hard             | quick, standard, thorough",
        "plan legs --format xml              | text, json",
        "plan legs --efort quick             | Unknown option: '--efort'",
        "plan legs --seed many               | many",
        "plan legs --seconds 0               | --seconds (0) must be from 1 to 3600.",
        "plan legs --seconds 1.5             | 1.5",
        "plan legs --effort                  | --effort",
        "plan legs --catalogue nowhere       | There is no such catalogue directory.",
        "plna legs                           | plna",
        "''                                  | ''",
        "--wersion                           | --wersion",
        "check                               | Missing required parameter",
        "check a.json b.json                 | b.json",
        "catalogue                           | counterset catalogue list",
        "catalogue lst                       | lst",
        "schema plan problem                 | problem",
      })
  void badUsageIsOneLineAndAHint(String line, String says) {
    String[] args = line.replace("''", "\u0001").split(" ");
    for (int i = 0; i < args.length; i++) {
      args[i] = args[i].replace("\u0001", "");
    }
    assertThat(Cli.run(folder, args).isRefused(1).err()).contains(says.replace("''", ""));
  }

  @Test
  void noCommandAtAll() {
    assertThat(Cli.run(folder).isRefused(1).err()).contains("A command is missing. Maybe: ");
  }
}

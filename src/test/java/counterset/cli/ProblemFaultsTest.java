package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Problem files with a fault: status 2, one line a fault with file, line, pointer and remedy. */
class ProblemFaultsTest {

  private static final String GOOD =
      "{\"problem\": 1, \"minutes\": 20, \"targets\": [\"lower\"]%s}";

  @TempDir Path folder;

  private Cli plan(String text, int faults) {
    Cli.write(folder, "p.json", text);
    Cli plan = Cli.fixed(folder, "plan", "p.json", "--effort", "quick").isRefused(faults);
    assertThat(plan.faults()).allMatch(line -> line.contains("p.json:1"));
    return plan;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"title\": null                 | /title",
        "\"level\": null                 | /level",
        "\"level\": 4                    | /level",
        "\"level\": \"two\"              | /level",
        "\"level\": 2.5                  | /level",
        "\"clock\": {\"work\": 99999999999999999999} | /clock/work",
        "\"clock\": {\"work\": 1e999}    | /clock/work",
        "\"clock\": {\"work\": -45}      | /clock/work",
        "\"clock\": {\"perSuperset\": 4} | /clock/perSuperset",
        "\"clock\": []                   | /clock",
        "\"seed\": 9223372036854775808   | /seed",
        "\"equipment\": [\"dumbbell\"]   | /equipment/0",
        "\"equipment\": [{\"id\": \"dumbell\"}] | Maybe \"dumbbell\"?",
        "\"equipment\": [{\"id\": \"mat\"}, {\"id\": \"mat\"}] | /equipment/1/id: The equipment"
            + " (mat) is listed twice",
        "\"equipment\": [{\"id\": \"dumbbell\", \"kg\": [\"heavy\"]}] | /equipment/0/kg/0",
        "\"limitations\": [\"sore-kness\"] | Maybe \"sore-knees\"?",
        "\"limitations\": \"sore-knees\" | /limitations",
        "\"exclude\": [\"lunges\"]       | Maybe \"lunge\"?",
        "\"include\": [\"goblet-sqat\"]  | Maybe \"goblet-squat\"?",
        "\"include\": [\"warm-march\"]   | made for the warm-up",
        "\"keep\": [{\"at\": \"A3\", \"exercise\": \"goblet-squat\"}] | /keep/0/at",
        "\"keep\": [{\"at\": \"3C\", \"exercise\": \"goblet-squat\"}] | /keep/0/at: The position"
            + " (C)",
        "\"keep\": [{\"at\": \"3A\"}]    | /keep/0",
        "\"likes\": [\"hinge\"], \"dislikes\": [\"hinge\"] | it cannot be both, keep one.",
        "\"weights\": {\"equipmentChanges\": 5} | Maybe \"equipmentChange\"?",
        "\"weights\": {\"equipmentChange\": -5} | /weights/equipmentChange",
        "\"recent\": [{\"date\": \"2026-02-30\", \"exercises\": []}] | not in the calendar",
        "\"equipement\": []              | Maybe \"equipment\"?",
        "\"pairing\": \"oposing\"        | Maybe \"opposing\"?",
      })
  void oneFaultIsOneLine(String fault, String says) {
    assertThat(plan(GOOD.formatted(", " + fault), 1).err()).contains(says);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"minutes\": 20, \"targets\": [\"lower\"]}                | problem",
        "{\"problem\": 2, \"minutes\": 20, \"targets\": [\"lower\"]} | /problem",
        "{\"problem\": 1, \"targets\": [\"lower\"]}                 | minutes",
        "{\"problem\": 1, \"minutes\": 20}                          | targets",
        "{\"problem\": 1, \"minutes\": 20, \"targets\": []}         | /targets",
        "{\"problem\": 1, \"minutes\": 20, \"targets\": [\"legs\"]} | /targets/0",
        "{\"problem\": 1, \"minutes\": 0, \"targets\": [\"lower\"]} | /minutes",
        "{\"problem\": 1, \"minutes\": 1e9, \"targets\": [\"lower\"]} | /minutes",
        "{\"problem\": 1, \"minutes\": 20, \"targets\": [\"calves\", \"calves\"]} | /targets/1",
        "{\"problem\": 1, \"minutes\": 20, \"targets\": [null]}     | /targets/0",
        "[]                                                         | p.json:1",
        "null                                                       | p.json:1",
        "7                                                          | p.json:1",
      })
  void whatMustBeThere(String text, String says) {
    assertThat(plan(text, 1).err()).contains(says);
  }

  @Test
  void allFaultsComeInOneRun() {
    Cli plan =
        plan(
            GOOD.formatted(
                ", \"levle\": 2, \"limitations\": [\"sore-kness\"], \"seed\": \"x\","
                    + " \"keep\": [{\"at\": \"3C\", \"exercise\": \"goblet-sqat\"}]"),
            5);
    assertThat(plan.err())
        .contains("Maybe \"level\"?", "Maybe \"sore-knees\"?", "Maybe \"goblet-squat\"?");
  }

  @Test
  void aPlanIsNoProblem() {
    Cli.write(folder, "p.json", counterset.json.Json.pretty(GoodPlan.whole()));
    Cli plan = Cli.fixed(folder, "plan", "p.json");
    assertThat(plan.status()).isEqualTo(Exit.BAD_INPUT);
    assertThat(plan.speaksPlainly().err()).contains("p.json");
  }
}

package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code check} agrees with {@code plan}. */
class CheckCommandTest {

  @TempDir Path folder;

  private Cli plan(String... ask) {
    String[] args = new String[ask.length + 5];
    args[0] = "plan";
    System.arraycopy(ask, 0, args, 1, ask.length);
    System.arraycopy(
        new String[] {"--effort", "quick", "--write", "plan.json"}, 0, args, ask.length + 1, 4);
    return Cli.fixed(folder, args);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "kept-from-tuesday",
        "lunch-break-legs",
        "saturday-whole-body",
        "seated-strength",
        "three-in-a-row",
        "twice-round"
      })
  void acceptsEveryPlanThatPlanWrites(String problem) {
    String file = Path.of("problems", problem + ".json").toAbsolutePath().toString();
    plan(file).succeeds();
    Cli check = Cli.fixed(folder, "check", "plan.json").succeeds();
    assertThat(check.out())
        .startsWith("The session keeps every rule.\n")
        .doesNotContain("The file says something else");
    assertThat(check.err()).isEmpty();
  }

  @Test
  void theScoreIsThatOfThePlan() {
    plan(Cli.ASK).succeeds();
    var written = counterset.json.JsonFiles.read(folder.resolve("plan.json")).at("/score");
    Cli check = Cli.fixed(folder, "check", "plan.json", "--format", "json").succeeds();
    assertThat(check.json().at("/score")).isEqualTo(written);
    assertThat(check.json().at("/feasible").booleanValue()).isTrue();
    assertThat(check.json().at("/faults").size()).isZero();
    assertThat(check.json().at("/differences").size()).isZero();
  }

  @Test
  void helpNamesTheExitStatus() {
    assertThat(Cli.fixed(folder, "check", "--help").succeeds().out()).contains("Exit status: 0 ");
  }
}

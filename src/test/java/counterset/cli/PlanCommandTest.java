package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterset.json.Schemas;
import counterset.search.Effort;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlanCommandTest {

  private static final String SHORT = "6 min, quadriceps, hamstrings, calves, dumbbells";

  @TempDir Path folder;

  private Cli plan(String... more) {
    String[] args = new String[more.length + 2];
    args[0] = "plan";
    args[1] = SHORT;
    System.arraycopy(more, 0, args, 2, more.length);
    return Cli.run(folder, args).succeeds();
  }

  @Test
  void theTextBeginsWithHowTheAskWasRead() {
    Cli plan = plan("--effort", "quick");
    assertThat(plan.out())
        .startsWith("Read as: 6 minutes\n")
        .contains("Read as: targets: quadriceps, hamstrings, calves\n")
        .contains("Read as: equipment: 2 dumbbells")
        .contains("\nORDER\n", "\nSCORE  all rules kept, all wishes met, ", "\nCAUTIONS\n")
        .endsWith("\n");
    assertThat(plan.err()).isEmpty();
  }

  @Test
  void jsonOnStandardOutputIsNothingButJson() {
    Cli plan = plan("--effort", "quick", "--format", "json");
    assertThat(Schemas.validate(plan.json(), "plan")).isEmpty();
    assertThat(plan.json().at("/problem/minutes").intValue()).isEqualTo(6);
    assertThat(plan.err().lines()).isNotEmpty().allMatch(line -> line.startsWith("Read as: "));
  }

  @Test
  void theSameSeedRepeatsAPlanByteForByte() {
    String first = plan("--effort", "quick", "--format", "json", "--seed", "4").out();
    String again = plan("--effort", "quick", "--format", "json", "--seed", "4").out();
    assertThat(again).isEqualTo(first).contains("\"seed\": 4");
  }

  @Test
  void anotherSeedGivesAnotherSession() {
    Cli one = Cli.run(folder, "plan", Cli.ASK, "--effort", "quick", "--format", "json");
    Cli two =
        Cli.run(folder, "plan", Cli.ASK, "--effort", "quick", "--format", "json", "--seed", "2");
    assertThat(two.json().at("/supersets")).isNotEqualTo(one.json().at("/supersets"));
  }

  @ParameterizedTest
  @EnumSource
  void effortCountsMoves(Effort effort) {
    Cli plan =
        Cli.run(folder, "plan", "4 min, calves", "--effort", effort.id(), "--format", "json");
    assertThat(plan.json().at("/solver/effort").textValue()).isEqualTo(effort.id());
    assertThat(plan.json().at("/solver/moves").longValue())
        .isEqualTo(effort.starts() * effort.moves(plan.json().at("/supersets").size()));
  }

  @Test
  void effortMayBeWrittenInCapitals() {
    assertThat(plan("--effort", "QUICK").out()).isEqualTo(plan("--effort", "quick").out());
  }

  @Test
  void effortIsStandardUnlessSaidOtherwise() {
    assertThat(plan().out()).isEqualTo(plan("--effort", "standard").out());
  }

  @Test
  void secondsAreATimeLimit() {
    Cli plan = plan("--seconds", "1", "--format", "json");
    assertThat(plan.json().at("/solver/effort").textValue()).isEqualTo("1 seconds");
    assertThat(plan.json().at("/score/feasible").booleanValue()).isTrue();
  }

  @Test
  void anAskMayBeTypedWithoutQuotes() {
    Cli plan =
        Cli.run(
            folder,
            "plan",
            "6",
            "min,",
            "quadriceps,",
            "hamstrings,",
            "calves,",
            "dumbbells",
            "--effort",
            "quick");
    assertThat(plan.succeeds().out()).isEqualTo(plan("--effort", "quick").out());
  }

  @Test
  void aProblemFileSaysEverythingItselfSoNothingIsEchoed() {
    Cli.write(
        folder,
        "legs.json",
        "{\"problem\": 1, \"title\": \"Short legs\", \"minutes\": 6, \"targets\": [\"calves\"]}");
    Cli plan = Cli.run(folder, "plan", "legs.json", "--effort", "quick").succeeds();
    assertThat(plan.out()).startsWith("SHORT LEGS\n");
    assertThat(plan.err()).isEmpty();
  }

  @Test
  void theSeedOfTheCommandLineGoesBeforeThatOfTheProblem() {
    Cli.write(
        folder,
        "p.json",
        "{\"problem\": 1, \"minutes\": 6, \"targets\": [\"calves\"], \"seed\": 9}");
    Cli own = Cli.run(folder, "plan", "p.json", "--effort", "quick", "--format", "json");
    Cli other =
        Cli.run(folder, "plan", "p.json", "--effort", "quick", "--format", "json", "--seed", "-3");
    assertThat(own.json().at("/problem/seed").intValue()).isEqualTo(9);
    assertThat(other.json().at("/problem/seed").intValue()).isEqualTo(-3);
  }
}

package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Schemas;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanBoundTest {

  private static final String[] PLAN = {
    "plan", "6 min, quadriceps, hamstrings, calves, dumbbells", "--effort", "quick"
  };

  @TempDir Path folder;

  private Cli plan(String... more) {
    String[] args = new String[PLAN.length + more.length];
    System.arraycopy(PLAN, 0, args, 0, PLAN.length);
    System.arraycopy(more, 0, args, PLAN.length, more.length);
    return Cli.run(folder, args);
  }

  @Test
  void oneLineMoreInTheTextTellsTheLimit() {
    String without = plan().succeeds().out();
    String with = plan("--bound").succeeds().out();
    String line =
        with.lines()
            .filter(text -> text.contains("possible (limit") || text.contains("No better plan"))
            .findFirst()
            .orElseThrow();
    assertThat(with.replace(line + "\n", "")).isEqualTo(without);
    assertThat(plan("--bound").out()).isEqualTo(with);
  }

  @Test
  void theJsonHasTheLimitOnlyWhereItWasAskedFor() {
    Cli with = plan("--bound", "--format", "json").succeeds();
    assertThat(Schemas.validate(with.json(), "plan")).isEmpty();
    ObjectNode tree = (ObjectNode) with.json().tree();
    int soft = tree.at("/score/soft").intValue();
    int limit = tree.at("/bound/soft").intValue();
    assertThat(limit).isGreaterThanOrEqualTo(soft);
    assertThat(tree.at("/bound/gap").intValue()).isEqualTo(limit - soft);
    tree.remove("bound");
    assertThat(tree).isEqualTo(plan("--format", "json").json().tree());
  }

  @Test
  void aFileWithALimitIsReadAgain() {
    plan("--bound", "--write", "p.json", "--write", "p.txt").succeeds();
    assertThat(Cli.read(folder.resolve("p.json"))).contains("\"bound\": {");
    assertThat(Cli.read(folder.resolve("p.txt"))).containsAnyOf("(limit ", "No better plan");
    assertThat(Cli.run(folder, "check", "p.json").succeeds().out())
        .startsWith("The session keeps every rule.\n")
        .doesNotContain("The file says something else");
  }

  @Test
  void ofATrackThereIsNoLimit() {
    Cli refused =
        Cli.run(
            folder,
            "plan",
            "6 min, calves, class with sore knees",
            "--track",
            "sore-knees",
            "--bound");
    assertThat(refused.isRefused(1).err())
        .contains("--bound is about the session that all do")
        .contains("Maybe leave out --track (sore-knees).");
  }

  @Test
  void weightsThatAreTooLargeLeaveTheLimitOpen() {
    Cli.write(
        folder,
        "p.json",
        "{\"problem\": 1, \"minutes\": 6, \"targets\": [\"calves\"], \"weights\": {\"likes\":"
            + " 1000000}}");
    Cli plan = Cli.run(folder, "plan", "p.json", "--effort", "quick", "--bound").succeeds();
    assertThat(plan.err()).contains("No limit is known: some weights are too large");
    assertThat(plan.out()).doesNotContain("(limit ");
  }
}

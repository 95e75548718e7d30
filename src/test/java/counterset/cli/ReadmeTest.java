package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The README says what the program does. */
class ReadmeTest {

  private static final String README = Cli.read(Path.of("README.md"));

  private static final Pattern LASTING =
      Pattern.compile(
          String.join(
              "|",
              "^[A-Z0-9 ,]{20,}$",
              "^(Length|Clock|Level|Targets|Limitations) .*",
              "^(FETCH|ORDER|CAUTIONS)$",
              "^(COVERAGE .*|SCORE  all rules kept, all wishes met, )",
              "^ +\\d+ +\\d+:\\d\\d ",
              "^\\d+:\\d\\d - \\d+:\\d\\d  SUPERSET \\d of \\d: ",
              "^ +\\d+:\\d\\d +([AB] |REST \\d+ s|END.*)",
              "^  (Quadriceps|Hamstrings|Gluteus|Hip|Calves) ",
              "^  Counterset .*",
              "^(  -|   ) [A-Z][a-z].*[.,]$"),
          Pattern.MULTILINE);

  @TempDir Path folder;

  @Test
  void runSheetIsLikeWhatTheFirstCommandPrints() {
    String ask = find("plan \"([^\"]+)\"\n```");
    String printed = Cli.run(folder, "plan", ask).succeeds().out();

    assertThat(lasting(find("<!-- run sheet[^\n]*\n```\n(.*?)```")))
        .hasSizeGreaterThan(30)
        .isSubsetOf(lasting(printed));
  }

  /** What the ask and the clock decide: no exercise and no points. */
  private static List<String> lasting(String sheet) {
    return LASTING.matcher(sheet).results().map(MatchResult::group).toList();
  }

  @Test
  void theTypedSessionIsRead() {
    String typed = find("best single change.\n\n```\n(.*?)```");
    Cli check = Cli.piped(folder, typed, "check", "-").speaksPlainly();

    assertThat(check.status()).isIn(Exit.DONE, Exit.INFEASIBLE);
    assertThat(check.out()).contains("line 2, 1A: ", "line 3, 2A and 2B: ");
    assertThat(check.err()).isEmpty();
  }

  @Test
  void theWeekIsPlanned() {
    Cli week = Cli.run(folder, "week", find("`week \"([^\"]+)\""), "--effort", "quick").succeeds();

    assertThat(week.out()).contains("MONDAY", "TUESDAY", "THURSDAY", "SATURDAY");
  }

  @Test
  void testCommandIsTheOneOfTheBuildServer() {
    assertThat(Cli.read(Path.of(".ci/run"))).contains(find("Pass the tests:\n\n```\n(.*?)\n```"));
  }

  @Test
  void everyCommandIsNamed() {
    assertThat(README)
        .contains(
            "| `plan ",
            "| `week ",
            "| `batch ",
            "| `log ",
            "| `check ",
            "| `compare ",
            "| `explain ",
            "| `swap ",
            "| `catalogue ",
            "| `schema ");
  }

  private static String find(String pattern) {
    Matcher matcher = Pattern.compile(pattern, Pattern.DOTALL).matcher(README);
    assertThat(matcher.find()).as(pattern).isTrue();
    return matcher.group(1);
  }
}

package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The README says what the program does. */
class ReadmeTest {

  private static final String README = Cli.read(Path.of("README.md"));

  @TempDir Path folder;

  @Test
  void runSheetIsWhatTheFirstCommandPrints() {
    String ask = find("plan \"([^\"]+)\"\n```");
    List<String> printed = Cli.run(folder, "plan", ask).succeeds().out().lines().toList();

    assertThat(
            find("<!-- run sheet[^\n]*\n```\n(.*?)```")
                .lines()
                .filter(line -> !line.equals("[...]")))
        .hasSizeGreaterThan(40)
        .allSatisfy(line -> assertThat(printed).contains(line));
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

package counterset.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The coach leads one clock: whoever follows a track begins every superset with the others. */
class TrackClockTest {

  private static final Pattern SUPERSET = Pattern.compile("(?m)^ *[0-9]+ +([0-9]+:[0-9]{2})  \\S");

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "mill-house-mixed-class, sore-shoulders",
    "mill-house-mixed-class, no-floor",
    "saturday-legs-class, sore-lower-back",
  })
  void everyTrackRunsOnTheClockOfTheClass(String problem, String track) {
    String file = Path.of("problems", problem + ".json").toAbsolutePath().toString();
    Cli all = Cli.fixed(folder, "plan", file, "--effort", "quick").succeeds();
    Cli own =
        Cli.fixed(folder, "plan", file, "--effort", "quick", "--track", track, "--write", "own.txt")
            .succeeds();
    assertThat(starts(own.out())).isEqualTo(starts(all.out())).hasSizeGreaterThan(5);
    assertThat(Cli.read(folder.resolve("own.txt"))).isEqualTo(own.out());
  }

  private static List<String> starts(String sheet) {
    return SUPERSET.matcher(sheet).results().map(match -> match.group(1)).toList();
  }
}

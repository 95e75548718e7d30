package counterset.cli;

import counterset.search.Effort;
import counterset.search.Limit;
import java.util.List;
import java.util.OptionalInt;
import picocli.CommandLine.Option;

/** How hard a command searches. */
final class SearchOptions {

  private static final int MOST_SECONDS = 3600;

  @Option(
      names = "--effort",
      paramLabel = "HOW",
      description = "quick, standard (the default) or thorough.")
  Effort effort = Effort.STANDARD;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description = "Search for N seconds; the result then depends on the machine.")
  Integer seconds;

  /** Adds what is wrong with the options. */
  void check(List<String> faults) {
    if (seconds != null && (seconds < 1 || seconds > MOST_SECONDS)) {
      faults.add("--seconds (" + seconds + ") must be from 1 to " + MOST_SECONDS + ".");
    }
  }

  /** When a search ends. */
  Limit limit() {
    return new Limit(effort, seconds == null ? OptionalInt.empty() : OptionalInt.of(seconds));
  }
}

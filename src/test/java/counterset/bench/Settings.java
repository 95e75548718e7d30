package counterset.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/**
 * How long the benchmark takes.
 *
 * @param target the folder of the packaged program
 * @param refereeSeconds for each problem, more than 0
 * @param turns that count of whatever takes turns, at least 1
 * @param only what the name of a problem must contain; empty for all of them
 * @param parts of {@code startup}, {@code quality}, {@code target} and {@code cost}, those to run
 */
record Settings(Path target, double refereeSeconds, int turns, String only, Set<String> parts) {

  static final String STARTUP = "startup";
  static final String QUALITY = "quality";
  static final String TARGET = "target";
  static final String COST = "cost";
  static final String ROSTER = "roster";

  private static final List<String> ALL = List.of(STARTUP, QUALITY, TARGET, COST, ROSTER);

  Settings {
    if (refereeSeconds <= 0 || turns < 1) {
      throw new IllegalArgumentException(
          "The benchmark needs bench.referee.seconds ("
              + refereeSeconds
              + ") above 0 and bench.turns ("
              + turns
              + ") of at least 1.");
    }
    if (!ALL.containsAll(parts)) {
      throw new IllegalArgumentException(
          "The parts (" + parts + ") in bench.parts must be some of " + ALL + ".");
    }
  }

  /** From the system properties {@code bench.*}. */
  static Settings fromProperties() {
    return new Settings(
        Path.of(System.getProperty("bench.target", "target")).toAbsolutePath(),
        Double.parseDouble(System.getProperty("bench.referee.seconds", "60")),
        Integer.getInteger("bench.turns", 5),
        System.getProperty("bench.only", ""),
        Set.of(System.getProperty("bench.parts", String.join(",", ALL)).split(",")));
  }
}

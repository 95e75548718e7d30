package counterset.bench;

import java.nio.file.Path;

/**
 * How long the benchmark takes.
 *
 * @param target the folder of the packaged program
 * @param refereeSeconds for each problem, more than 0
 * @param turns that count of whatever takes turns, at least 1
 * @param only what the name of a problem must contain; empty for all of them
 */
record Settings(Path target, double refereeSeconds, int turns, String only) {

  Settings {
    if (refereeSeconds <= 0 || turns < 1) {
      throw new IllegalArgumentException(
          "The benchmark needs bench.referee.seconds ("
              + refereeSeconds
              + ") above 0 and bench.turns ("
              + turns
              + ") of at least 1.");
    }
  }

  /** From the system properties {@code bench.*}. */
  static Settings fromProperties() {
    return new Settings(
        Path.of(System.getProperty("bench.target", "target")).toAbsolutePath(),
        Double.parseDouble(System.getProperty("bench.referee.seconds", "60")),
        Integer.getInteger("bench.turns", 5),
        System.getProperty("bench.only", ""));
  }
}

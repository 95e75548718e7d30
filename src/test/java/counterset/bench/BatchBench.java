package counterset.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * How many sessions a folder of problems gives in a second, on one core and on all.
 *
 * <p>The time of a folder with a single problem is taken off first, so that what is left is
 * planning and not the start of the program. Only the ratio means something elsewhere. Needs {@code
 * mvn package} and is no test: run {@code main}.
 */
public final class BatchBench {

  private static final int FILES = 32;
  private static final double LEAST_SHARE = 0.7;
  private static final String PROBLEM =
      "{\"problem\": 1, \"minutes\": 20, \"targets\": [\"lower\"], \"equipment\": [{\"id\":"
          + " \"dumbbell\", \"count\": 2}], \"seed\": SEED}";

  private BatchBench() {}

  /** Prints the rows of {@link #rows}. */
  public static void main(String[] args) throws Exception {
    for (Row row : rows(Path.of("target"))) {
      System.out.printf(
          Locale.ROOT,
          "%-24s %-42s %-22s %s%n",
          row.name(),
          row.measured(),
          row.target(),
          row.met() ? "" : "missed");
    }
  }

  /**
   * Measures.
   *
   * @param target the folder of the packaged program
   * @throws IOException if a process cannot be started
   * @throws IllegalStateException if a command fails
   */
  public static List<Row> rows(Path target) throws IOException, InterruptedException {
    Path jar = target.resolve("counterset.jar").toAbsolutePath();
    Path folder = Files.createTempDirectory("roster");
    try {
      int cores = Runtime.getRuntime().availableProcessors();
      double one = perSecond(jar, folder, 1);
      double all = perSecond(jar, folder, cores);
      double share = all / (one * cores);
      List<Row> rows = new ArrayList<>();
      rows.add(new Row("batch, one job", sessions(one), "", true));
      rows.add(new Row("batch, " + cores + " jobs", sessions(all), "", true));
      rows.add(
          new Row(
              "batch, per core",
              String.format(Locale.ROOT, "%.2f of one job alone", share),
              "at least " + LEAST_SHARE,
              share >= LEAST_SHARE));
      return rows;
    } finally {
      delete(folder);
    }
  }

  private static String sessions(double perSecond) {
    return String.format(Locale.ROOT, "%.2f sessions a second", perSecond);
  }

  private static double perSecond(Path jar, Path folder, int jobs)
      throws IOException, InterruptedException {
    Path single = roster(folder.resolve("single-" + jobs), 1);
    Path whole = roster(folder.resolve("whole-" + jobs), FILES);
    double start = seconds(jar, single, jobs);
    return (FILES - 1) / (seconds(jar, whole, jobs) - start);
  }

  private static Path roster(Path folder, int files) throws IOException {
    Files.createDirectory(folder);
    for (int i = 1; i <= files; i++) {
      Files.writeString(
          folder.resolve("client-" + i + ".json"), PROBLEM.replace("SEED", String.valueOf(i)));
    }
    return folder;
  }

  private static double seconds(Path jar, Path roster, int jobs)
      throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    long start = System.nanoTime();
    int status =
        new ProcessBuilder(
                java, "-jar", jar.toString(), "batch", roster.toString(), "--jobs", "" + jobs)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start()
            .waitFor();
    if (status != 0) {
      throw new IllegalStateException("The batch ended with " + status + ".");
    }
    return (System.nanoTime() - start) / 1e9;
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}

package counterset.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.tools.ToolProvider;

/**
 * How long whole commands take beside a Java machine that only prints hello, and how much memory.
 *
 * <p>All take turns in one run, after one turn that does not count, so that whatever else the
 * machine does falls on all alike. Only the ratios mean something elsewhere. Needs {@code mvn
 * package}, Linux (the memory is the peak resident set that {@code /proc} tells while the processes
 * live) and is no test: run {@code main}.
 */
public final class StartupBench {

  private static final int TURNS = 7;
  private static final double WALL_TARGET = 2.5;
  private static final long MEMORY_TARGET_MIB = 256;
  private static final String ASK = "20 min, lower body, dumbbells plus ankle weights, sore knees";
  private static final String HELLO =
      "public class Hello { public static void main(String[] a) { System.out.println(\"hello\"); } }";
  private static final String PLAN = "plan";

  private StartupBench() {}

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
    Map<String, Runs> all = new LinkedHashMap<>();
    commands(target.toAbsolutePath()).forEach((name, command) -> all.put(name, new Runs(command)));
    for (int turn = 0; turn <= TURNS; turn++) {
      for (Runs runs : all.values()) {
        runs.turn(turn > 0);
      }
    }
    double hello = all.values().iterator().next().medianMillis();
    List<Row> rows = new ArrayList<>();
    all.forEach((name, runs) -> rows.add(row(name, runs, hello)));
    return rows;
  }

  private static Row row(String name, Runs runs, double hello) {
    double ratio = runs.medianMillis() / hello;
    String measured =
        String.format(
            Locale.ROOT,
            "%.1f times hello (%.0f ms), %d MiB",
            ratio,
            runs.medianMillis(),
            runs.peakMebibytes());
    boolean aimed = name.startsWith(PLAN);
    String target = aimed ? "at most " + WALL_TARGET + ", under " + MEMORY_TARGET_MIB + " MiB" : "";
    boolean met = ratio <= WALL_TARGET && runs.peakMebibytes() < MEMORY_TARGET_MIB;
    return new Row(name, measured, target, met || !aimed);
  }

  private static Map<String, List<String>> commands(Path target) throws IOException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String jar = target.resolve("counterset.jar").toString();
    String script = target.resolve("counterset").toString();
    Map<String, List<String>> commands = new LinkedHashMap<>();
    commands.put("hello", List.of(java, "-cp", hello().toString(), "Hello"));
    commands.put("version, script", List.of(script, "--version"));
    commands.put("version, jar", List.of(java, "-jar", jar, "--version"));
    commands.put("show, script", List.of(script, "catalogue", "show", "goblet-squat"));
    commands.put("show, jar", List.of(java, "-jar", jar, "catalogue", "show", "goblet-squat"));
    commands.put(PLAN + ", script", List.of(script, PLAN, ASK));
    commands.put(PLAN + ", jar", List.of(java, "-jar", jar, PLAN, ASK));
    return commands;
  }

  private static Path hello() throws IOException {
    Path folder = Files.createTempDirectory("hello");
    Path source = Files.writeString(folder.resolve("Hello.java"), HELLO);
    if (ToolProvider.getSystemJavaCompiler().run(null, null, null, source.toString()) != 0) {
      throw new IllegalStateException("The hello to compare with does not compile.");
    }
    return folder;
  }
}

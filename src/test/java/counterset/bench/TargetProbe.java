package counterset.bench;

import static java.nio.charset.StandardCharsets.US_ASCII;

import counterset.catalogue.Catalogues;
import counterset.model.Catalogue;
import counterset.search.Effort;
import counterset.search.TimedSearch;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Runs one search in a Java machine of its own and tells when it found what. */
public final class TargetProbe {

  private TargetProbe() {}

  /** Prints the nanoseconds, hard, medium and soft points of each find; takes a file and a seed. */
  public static void main(String[] args) {
    Catalogue catalogue = Catalogues.embedded();
    Shipped shipped = Shipped.of(Path.of(args[0]), catalogue);
    List<TimedSearch.Found> all =
        TimedSearch.run(
            shipped.problem().withSeed(Long.parseLong(args[1])), catalogue, Effort.STANDARD);
    for (TimedSearch.Found found : all) {
      System.out.println(
          found.nanos() + " " + found.hard() + " " + found.medium() + " " + found.soft());
    }
  }

  /**
   * What {@link #main} prints in a new Java machine.
   *
   * @param java the command that starts one, up to its main class
   * @throws IllegalStateException if it fails
   */
  static List<TimedSearch.Found> run(List<String> java, Path file, long seed)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(java);
    command.addAll(List.of(TargetProbe.class.getName(), file.toString(), String.valueOf(seed)));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    String printed = new String(process.getInputStream().readAllBytes(), US_ASCII);
    if (process.waitFor() != 0) {
      throw new IllegalStateException("The search of " + file + " failed.");
    }
    return printed.lines().map(TargetProbe::read).toList();
  }

  private static TimedSearch.Found read(String line) {
    int[] points = Stream.of(line.split(" ")).skip(1).mapToInt(Integer::parseInt).toArray();
    long nanos = Long.parseLong(line.substring(0, line.indexOf(' ')));
    return new TimedSearch.Found(nanos, points[0], points[1], points[2]);
  }
}

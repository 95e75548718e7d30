package counterset.referee;

import counterset.catalogue.Catalogues;
import counterset.model.Catalogue;
import counterset.model.Identified;
import counterset.model.Problem;
import counterset.planning.ExerciseFilter;
import counterset.planning.constraints.SessionConstraint;
import counterset.problem.ProblemReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Judges the problems that come with the project, over the whole catalogue: an incumbent and a
 * bound, seldom a proof. For the benchmark; too slow for the build.
 */
public final class FullSizeReferee {

  private final Catalogue catalogue = Catalogues.embedded();
  private final Referee referee = new Referee(catalogue);

  /**
   * What the referee says of one problem, without a hint.
   *
   * @param withoutTracks whether the problem has tracks, which the verdict ignores
   */
  public record Judged(String file, boolean withoutTracks, Verdict verdict) {}

  /**
   * Judges every problem of a folder, in the order of the file names.
   *
   * @param seconds for each of the two passes of each problem
   */
  public Map<String, Judged> judgeAll(Path folder, double seconds) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files = all.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
    Map<String, Judged> judged = new LinkedHashMap<>();
    for (Path file : files) {
      judged.put(file.getFileName().toString(), judge(file, seconds));
    }
    return judged;
  }

  /** Judges the problem of one file with two workers. */
  public Judged judge(Path file, double seconds) {
    Problem problem =
        new ProblemReader(
                catalogue,
                Stream.of(SessionConstraint.values())
                    .map(Identified::id)
                    .collect(Collectors.toSet()))
            .read(file);
    Verdict verdict =
        referee.judge(
            problem,
            new ExerciseFilter(problem, catalogue).main(),
            List.of(),
            new Limits(seconds, 2, false));
    return new Judged(file.getFileName().toString(), !problem.tracks().isEmpty(), verdict);
  }
}

package counterset.bench;

import counterset.model.Catalogue;
import counterset.model.Identified;
import counterset.model.Problem;
import counterset.problem.ProblemReader;
import counterset.score.Constraints;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A problem that comes with the project.
 *
 * @param name of its file, without the ending
 */
record Shipped(String name, Path file, Problem problem) {

  /** Those of a folder, in the order of their names. */
  static List<Shipped> in(Path folder, Catalogue catalogue) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files = all.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
    List<Shipped> problems = new ArrayList<>();
    for (Path file : files) {
      problems.add(of(file, catalogue));
    }
    return problems;
  }

  static Shipped of(Path file, Catalogue catalogue) {
    ProblemReader reader =
        new ProblemReader(
            catalogue,
            Constraints.OF_SESSIONS.stream().map(Identified::id).collect(Collectors.toSet()));
    String name = file.getFileName().toString().replaceFirst("\\.json$", "");
    return new Shipped(name, file, reader.read(file));
  }
}

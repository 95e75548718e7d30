package counterset.cli;

import counterset.ask.WishReading;
import counterset.ask.WishWords;
import counterset.intake.Readers;
import counterset.json.BadRequest;
import counterset.json.InvalidInputException;
import counterset.json.Json;
import counterset.json.JsonDocument;
import counterset.json.Violation;
import counterset.model.Catalogue;
import counterset.model.Keep;
import counterset.model.Problem;
import counterset.problem.ProblemJson;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Option;

/** Wishes about exercises that are added to whatever is asked for. */
final class WishOptions {

  @Option(
      names = "--keep",
      paramLabel = "PLACE=EXERCISE",
      description = "This exercise stays at this place, such as 1A=goblet-squat. May be repeated.")
  List<String> keep = new ArrayList<>();

  @Option(
      names = "--with",
      paramLabel = "EXERCISE",
      description = "This exercise is somewhere in the session. May be repeated.")
  List<String> with = new ArrayList<>();

  @Option(
      names = "--without",
      paramLabel = "NAME",
      description =
          "Nothing of this exercise, family or pattern is in the session, such as lunges. May be"
              + " repeated.")
  List<String> without = new ArrayList<>();

  /**
   * The problem with the wishes.
   *
   * @throws BadRequest if a name is not understood, or the wishes contradict the problem
   */
  Problem addTo(Problem problem, Catalogue catalogue) {
    if (keep.isEmpty() && with.isEmpty() && without.isEmpty()) {
      return problem;
    }
    WishReading wishes = new WishWords(catalogue).read(keep, with, without);
    if (!wishes.faults().isEmpty()) {
      throw new BadRequest(wishes.faults());
    }
    Problem changed = changed(problem, wishes);
    try {
      // Read again as a file would be, since the rules for what goes together are there.
      return Readers.problems(catalogue)
          .read(JsonDocument.parse("options", Json.pretty(ProblemJson.write(changed))), "");
    } catch (InvalidInputException e) {
      throw new BadRequest(
          e.violations().stream()
              .map(Violation::message)
              .map("With these options: "::concat)
              .toList());
    }
  }

  private static Problem changed(Problem problem, WishReading wishes) {
    Set<String> include = new LinkedHashSet<>(problem.include());
    include.addAll(wishes.include());
    Set<String> exclude = new LinkedHashSet<>(problem.exclude());
    exclude.addAll(wishes.exclude());
    List<Keep> kept = new ArrayList<>(problem.keep());
    // A place named again is changed, not contradicted.
    kept.removeIf(old -> wishes.keep().stream().anyMatch(other -> other.at().equals(old.at())));
    kept.addAll(wishes.keep());
    return problem.toBuilder().include(include).exclude(exclude).keep(kept).build();
  }
}

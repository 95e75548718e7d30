package counterset.quality;

import counterset.intake.Request;
import counterset.json.BadRequest;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Problem;
import counterset.quality.Reference.Written;
import counterset.timeline.SessionLength;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A reference in the words of the program: its ask as a problem, its names as exercises.
 *
 * @param problem empty where the ask is refused
 * @param exercises superset by superset; a superset with a name that nothing stands for is left
 *     out, and so is what the clock has no room for
 * @param leftOut the supersets left out
 * @param standIns what stands for a name that the catalogue lacks
 */
record Mapped(
    Reference reference,
    Optional<Problem> problem,
    List<Exercise> exercises,
    int leftOut,
    List<String> standIns) {

  /** A session that lacks more than one superset in this many says little of its order. */
  private static final int MOST_LEFT_OUT = 4;

  static List<Mapped> all(Catalogue catalogue) {
    ReferenceNames names = new ReferenceNames(catalogue);
    return References.all().stream().map(it -> of(it, names, catalogue)).toList();
  }

  private static Mapped of(Reference reference, ReferenceNames names, Catalogue catalogue) {
    Optional<Problem> problem = problem(reference.ask(), catalogue);
    Set<Exercise> found = new LinkedHashSet<>();
    List<List<Exercise>> supersets = new ArrayList<>();
    List<String> standIns = new ArrayList<>();
    for (List<Written> pair : reference.supersets()) {
      pair.forEach(place -> names.find(place).ifPresent(it -> found.add(it.exercise())));
    }
    for (List<Written> pair : reference.supersets()) {
      List<Exercise> own = new ArrayList<>();
      for (Written place : pair) {
        names
            .find(place)
            .map(ReferenceNames.Found::exercise)
            .or(() -> standIn(place, names, found, standIns))
            .ifPresent(own::add);
      }
      if (own.size() == pair.size()) {
        supersets.add(own);
      }
    }
    int leftOut = reference.supersets().size() - supersets.size();
    int room =
        problem.map(it -> SessionLength.supersetsThatFit(it.clock(), it.minutes())).orElse(0);
    List<Exercise> exercises = supersets.stream().limit(room).flatMap(List::stream).toList();
    return new Mapped(reference, problem, exercises, leftOut, standIns);
  }

  private static Optional<Exercise> standIn(
      Written place, ReferenceNames names, Set<Exercise> found, List<String> told) {
    Optional<Exercise> nearest =
        names
            .nearest(place)
            .filter(it -> found.stream().noneMatch(other -> other.family().equals(it.family())));
    nearest.ifPresent(it -> told.add(place + " -> " + it.id()));
    return nearest;
  }

  private static Optional<Problem> problem(String ask, Catalogue catalogue) {
    try {
      return Optional.of(Request.session(List.of(ask), catalogue, Path.of("")).problem());
    } catch (BadRequest refused) {
      return Optional.empty();
    }
  }

  /** Whether enough of it is there to judge its order. */
  boolean isWhole() {
    return problem.isPresent() && leftOut * MOST_LEFT_OUT <= reference.supersets().size();
  }

  /** The same with other weights of constraints. */
  Mapped weighing(Map<String, Integer> weights) {
    return new Mapped(
        reference,
        problem.map(it -> it.toBuilder().weights(weights).build()),
        exercises,
        leftOut,
        standIns);
  }

  Judged judged(Catalogue catalogue) {
    return Judged.of(problem.orElseThrow(), catalogue, exercises);
  }
}

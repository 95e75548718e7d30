package counterset.problem;

import counterset.json.Cursor;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.model.Part;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What must be in a session, and where, must be possible at once. */
final class PlaceRules {

  private record Kept(At at, Exercise exercise) {}

  private final Catalogue catalogue;

  PlaceRules(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  void check(Cursor problem) {
    Set<String> exclude = Set.copyOf(problem.field("exclude").texts());
    problem.field("include").elements().forEach(name -> exercise(name, exclude));
    int positions =
        problem
            .field("clock")
            .field("perSuperset")
            .integer()
            .orElse(Intervals.EXPRESS.perSuperset());
    List<Kept> before = new ArrayList<>();
    for (Cursor keep : problem.field("keep").elements()) {
      Optional<At> at = keep.field("at").text().flatMap(At::parse);
      at.filter(place -> place.position() >= positions)
          .ifPresent(place -> beyond(keep.field("at"), place, positions));
      Optional<Exercise> exercise = exercise(keep.field("exercise"), exclude);
      if (at.isPresent() && exercise.isPresent()) {
        Kept kept = new Kept(at.get(), exercise.get());
        before.forEach(other -> together(keep, other, kept));
        before.add(kept);
      }
    }
  }

  private static void beyond(Cursor at, At place, int positions) {
    at.fault(
        "The position ("
            + place.letter()
            + ") of ("
            + place
            + ") does not exist: a superset has "
            + positions
            + (positions == 1 ? " position" : " positions")
            + " (clock.perSuperset).");
  }

  private Optional<Exercise> exercise(Cursor name, Set<String> exclude) {
    Optional<Exercise> exercise =
        name.id("exercise", catalogue.exercises().keySet()).map(catalogue.exercises()::get);
    if (exercise.isEmpty()) {
      return exercise;
    }
    String id = exercise.get().id();
    if (exercise.get().part() != Part.MAIN) {
      String part = exercise.get().part().id();
      name.fault(
          "The exercise (" + id + ") is made for the " + part + " and has no place in a superset.");
    } else if (Problem.names(exclude, exercise.get())) {
      String rule =
          exclude.stream()
              .filter(word -> Problem.names(Set.of(word), exercise.get()))
              .sorted()
              .collect(Collectors.joining(", "));
      name.fault(
          "The exercise ("
              + id
              + ") is excluded as well ("
              + rule
              + "); it cannot be both, drop one.");
    }
    return exercise;
  }

  private static void together(Cursor keep, Kept first, Kept second) {
    boolean sameSuperset = first.at().superset() == second.at().superset();
    boolean same = first.exercise().root().equals(second.exercise().root());
    boolean bothSides =
        sameSuperset
            && first.exercise().equals(second.exercise())
            && first.exercise().isUnilateral();
    if (first.at().equals(second.at())) {
      keep.field("at")
          .fault(
              "The place ("
                  + first.at()
                  + ") is kept for ("
                  + first.exercise().id()
                  + ") already.");
    } else if (same && !bothSides) {
      keep.field("exercise")
          .fault(
              "The exercise ("
                  + second.exercise().id()
                  + ") is kept at ("
                  + first.at()
                  + ") already"
                  + (first.exercise().equals(second.exercise())
                      ? ""
                      : ", as (" + first.exercise().id() + ")")
                  + "; a session has it once.");
    } else if (sameSuperset
        && !bothSides
        && (first.exercise().isUnilateral() || second.exercise().isUnilateral())) {
      Kept alone = first.exercise().isUnilateral() ? first : second;
      keep.field("at")
          .fault(
              "The unilateral exercise ("
                  + alone.exercise().id()
                  + ") at ("
                  + alone.at()
                  + ") fills its whole superset, one side after the other; keep nothing beside it.");
    }
  }
}

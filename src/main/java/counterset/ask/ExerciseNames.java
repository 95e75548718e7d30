package counterset.ask;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Part;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The one main exercise that a name stands for, or why there is none. */
final class ExerciseNames {

  private final Catalogue catalogue;

  ExerciseNames(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The id; a name that several variants of one exercise share stands for that exercise. */
  Optional<String> one(Match match) {
    List<Exercise> named = main(match);
    if (named.size() == 1) {
      return Optional.of(named.get(0).id());
    }
    List<String> roots = named.stream().map(Exercise::root).distinct().toList();
    return roots.stream()
        .filter(root -> roots.size() == 1 && catalogue.exercises().containsKey(root))
        .findFirst();
  }

  /** Why a name stands for no single main exercise. */
  String problem(Match match) {
    List<Exercise> named = main(match);
    if (!named.isEmpty()) {
      return "This may be any of " + names(named) + ". Name one of them.";
    }
    if (match.has(Kind.EXERCISE)) {
      return "This exercise is for the warm-up or cool-down. Only exercises of the main part can be asked for.";
    }
    List<String> groups = match.ids(Kind.FAMILY, Kind.PATTERN);
    List<Exercise> members =
        catalogue.exercises(Part.MAIN).stream()
            .filter(
                exercise ->
                    groups.contains(exercise.family()) || groups.contains(exercise.pattern()))
            .toList();
    return "This is a family or pattern, not one exercise. Name an exercise of it, such as "
        + names(members)
        + ", or say that the client likes it.";
  }

  private List<Exercise> main(Match match) {
    return match.ids(Kind.EXERCISE).stream()
        .map(catalogue.exercises()::get)
        .filter(exercise -> exercise.part() == Part.MAIN)
        .toList();
  }

  private static String names(List<Exercise> exercises) {
    return exercises.stream()
        .limit(3)
        .map(exercise -> '"' + exercise.name() + '"')
        .collect(Collectors.joining(", "));
  }
}

package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Item;
import counterset.model.Limitation;
import counterset.model.Need;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Which rule an exercise breaks, and by what. */
final class RuleWords {

  private final Problem problem;
  private final Catalogue catalogue;
  private final ItemWords items;

  RuleWords(Problem problem, Catalogue catalogue) {
    this.problem = problem;
    this.catalogue = catalogue;
    this.items = new ItemWords(problem);
  }

  /** What it needs and the client does not have. */
  String missing(Exercise exercise) {
    List<Item> missing = new ArrayList<>();
    for (Need need : exercise.needs()) {
      Item item = new Item(catalogue.equipment().get(need.equipment()), need.count(), need.load());
      if (!item.equipment().alwaysThere()
          && problem.equipment().stream().noneMatch(owned -> owned.serves(need))) {
        missing.add(item);
      }
    }
    return items.said(missing);
  }

  /** The limitations that it breaks, each with what breaks it. */
  String broken(Exercise exercise) {
    return broken(exercise, problem.limitations(), catalogue);
  }

  /** Those that it breaks out of some. */
  static String broken(Exercise exercise, Collection<String> limitations, Catalogue catalogue) {
    return English.list(
        limitations.stream()
            .map(catalogue.limitations()::get)
            .filter(limitation -> !limitation.allows(exercise))
            .map(limitation -> English.lower(limitation.name()) + causes(limitation, exercise))
            .toList());
  }

  private static String causes(Limitation limitation, Exercise exercise) {
    List<String> causes = new ArrayList<>();
    limitation
        .maxDemand()
        .forEach(
            (joint, most) -> {
              int demand = exercise.demandOn(joint);
              if (demand > most) {
                causes.add(joint.id() + " demand " + demand + ", at most " + most);
              }
            });
    exercise.traits().stream().filter(limitation.avoidTraits()::contains).forEach(causes::add);
    if (limitation.avoidPositions().contains(exercise.position())) {
      causes.add("position " + exercise.position().id());
    }
    return " (" + String.join(", ", causes) + ")";
  }
}

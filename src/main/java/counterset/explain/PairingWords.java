package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Muscle;
import counterset.model.Opposites;
import counterset.model.Superset;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/** What a superset is, within a sentence that compares it with another. */
final class PairingWords {

  private final Catalogue catalogue;
  private final Opposites opposites;
  private final KindWords kinds;

  PairingWords(Catalogue catalogue) {
    this.catalogue = catalogue;
    this.opposites = new Opposites(catalogue);
    this.kinds = new KindWords(catalogue);
  }

  /** {@code a pair for front and back of the thigh}. */
  String of(Superset superset) {
    List<Exercise> exercises = superset.exercises();
    if (superset.isUnilateral()) {
      return "one exercise for both sides";
    }
    if (exercises.size() < 2) {
      return "not full";
    }
    List<String> links = new ArrayList<>();
    for (int i = 1; i < exercises.size(); i++) {
      links.add(pair(exercises.get(i - 1), exercises.get(i)));
    }
    return (exercises.size() == 2 ? "a pair for " : "a row of ")
        + String.join(", then ", new LinkedHashSet<>(links));
  }

  private String pair(Exercise first, Exercise second) {
    return switch (opposites.kind(first, second)) {
      case UNILATERAL -> "both sides";
      case COMPOUND -> kinds.muscles(KindWords.shared(first, second)) + " twice";
      case AGONIST_ANTAGONIST -> opponents(first, second);
      case OPPOSITE_REGION -> kinds.regions(first, second).replace(" with ", " and ");
      case MIXED -> kinds.muscles(first.primary()) + " and " + kinds.muscles(second.primary());
    };
  }

  private String opponents(Exercise first, Exercise second) {
    for (String one : first.primary()) {
      for (String other : second.primary()) {
        Muscle here = catalogue.muscles().get(one);
        Muscle there = catalogue.muscles().get(other);
        if (here.opposes().contains(other)) {
          String names = English.lower(here.name()) + " and " + English.lower(there.name());
          return Segments.both(here, there).orElse(names);
        }
      }
    }
    return kinds.muscles(first.primary()) + " with " + kinds.muscles(second.primary());
  }
}

package counterset.ask;

import counterset.model.Catalogue;
import counterset.model.Muscle;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The muscle groups that a name stands for; a region stands for its default targets. */
final class MuscleNames {

  private final Catalogue catalogue;

  MuscleNames(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * The name at a place, if it is a muscle group or region and not something longer, such as "back
   * pain".
   */
  static Optional<Match> one(Vocabulary vocabulary, Words words, int at) {
    return vocabulary
        .match(words, at, Kind.values())
        .filter(it -> it.has(Kind.MUSCLE) || it.has(Kind.REGION));
  }

  List<String> of(Match match) {
    Set<String> ids = new LinkedHashSet<>(match.ids(Kind.MUSCLE));
    match.ids(Kind.REGION).forEach(region -> ids.addAll(defaults(catalogue, region)));
    return List.copyOf(ids);
  }

  static List<String> defaults(Catalogue catalogue, String region) {
    return catalogue.muscles().values().stream()
        .filter(Muscle::defaultTarget)
        .filter(muscle -> region.equals(OwnWords.WHOLE) || muscle.region().id().equals(region))
        .map(Muscle::id)
        .toList();
  }
}

package counterset.explain;

import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.Exercise;
import counterset.model.Match;
import counterset.model.Muscle;
import counterset.model.Plan;
import java.util.List;
import java.util.Optional;

/** The names of what a match is about. */
final class MatchNames {

  private final Plan plan;
  private final Catalogue catalogue;

  MatchNames(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.catalogue = catalogue;
  }

  /** The exercise at its first place. */
  Optional<Exercise> exercise(Match match) {
    return match.places().stream().findFirst().flatMap(this::exercise);
  }

  Optional<Exercise> exercise(At at) {
    return plan.session().supersets().stream()
        .filter(
            superset ->
                superset.number() == at.superset() && at.position() < superset.exercises().size())
        .map(superset -> superset.exercises().get(at.position()))
        .findFirst();
  }

  /** The exercises at its places, in order. */
  String places(Match match) {
    List<String> names =
        match.places().stream()
            .map(this::exercise)
            .flatMap(Optional::stream)
            .map(Exercise::name)
            .distinct()
            .toList();
    return String.join(" to ", names);
  }

  /** The muscle group, equipment or exercise that it is about where no place tells. */
  String subject(Match match) {
    String id = match.subject().orElse("");
    return Optional.ofNullable(catalogue.muscles().get(id))
        .map(Muscle::name)
        .or(() -> Optional.ofNullable(catalogue.equipment().get(id)).map(Equipment::name))
        .or(() -> Optional.ofNullable(catalogue.exercises().get(id)).map(Exercise::name))
        .orElse(id);
  }
}

package counterset.explain;

import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.Exercise;
import counterset.model.Item;
import counterset.model.Muscle;
import counterset.model.Owned;
import counterset.model.Problem;
import counterset.model.Superset;
import counterset.score.Names;
import java.util.Collection;
import java.util.Optional;

/** The names of what matches are about, by a catalogue. */
final class MatchNames implements Names {

  private final Catalogue catalogue;
  private final KindWords kinds;
  private final PairingWords pairings;

  MatchNames(Catalogue catalogue) {
    this.catalogue = catalogue;
    this.kinds = new KindWords(catalogue);
    this.pairings = new PairingWords(catalogue);
  }

  @Override
  public String of(String id) {
    return Optional.ofNullable(catalogue.muscles().get(id))
        .map(Muscle::name)
        .or(() -> Optional.ofNullable(catalogue.equipment().get(id)).map(Equipment::name))
        .or(() -> Optional.ofNullable(catalogue.exercises().get(id)).map(Exercise::name))
        .orElse(id);
  }

  @Override
  public String muscles(Collection<String> ids) {
    return kinds.muscles(ids);
  }

  @Override
  public String item(String id, Problem problem) {
    int count =
        problem.equipment().stream()
            .filter(owned -> owned.id().equals(id))
            .mapToInt(Owned::count)
            .findFirst()
            .orElse(1);
    return Optional.ofNullable(catalogue.equipment().get(id))
        .map(equipment -> new Item(equipment, count, Optional.empty()))
        .map(new ItemWords(problem)::saidAgain)
        .orElse(id);
  }

  @Override
  public String missing(Exercise exercise, Problem problem) {
    return new RuleWords(problem, catalogue).missing(exercise);
  }

  @Override
  public String broken(Exercise exercise, Collection<String> limitations) {
    return RuleWords.broken(exercise, limitations, catalogue);
  }

  @Override
  public String trained(Superset superset) {
    return kinds.heading(superset).replaceFirst("^(opposites|the same muscle twice): ", "");
  }

  @Override
  public String pairing(Superset superset) {
    return pairings.of(superset);
  }
}

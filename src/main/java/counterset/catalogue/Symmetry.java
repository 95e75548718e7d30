package counterset.catalogue;

import counterset.model.Muscle;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Opposition works both ways: what an added muscle group opposes opposes it in turn. */
final class Symmetry {

  private Symmetry() {}

  static List<Muscle> completed(List<Muscle> muscles) {
    return muscles.stream().map(muscle -> completed(muscle, muscles)).toList();
  }

  private static Muscle completed(Muscle muscle, List<Muscle> all) {
    Set<String> opposes = new LinkedHashSet<>(muscle.opposes());
    all.stream()
        .filter(other -> other.opposes().contains(muscle.id()))
        .map(Muscle::id)
        .forEach(opposes::add);
    return opposes.equals(muscle.opposes())
        ? muscle
        : new Muscle(
            muscle.id(),
            muscle.name(),
            muscle.region(),
            muscle.aspect(),
            opposes,
            muscle.defaultTarget(),
            muscle.names());
  }
}

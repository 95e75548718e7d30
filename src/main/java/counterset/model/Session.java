package counterset.model;

import java.util.List;
import java.util.stream.Stream;

/** What is done in which order: the decision that a plan consists of. */
public record Session(List<Exercise> warmUp, List<Superset> supersets, List<Exercise> coolDown) {

  public Session {
    warmUp = List.copyOf(warmUp);
    supersets = List.copyOf(supersets);
    coolDown = List.copyOf(coolDown);
  }

  /** The exercises of the supersets in order; a unilateral one once a superset. */
  public Stream<Exercise> work() {
    return supersets.stream().flatMap(superset -> superset.distinct().stream());
  }
}

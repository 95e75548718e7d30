package counterset.model;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What is done in which order: the decision that a plan consists of.
 *
 * @param modifications by track, in the order of the problem's tracks, what its followers do
 *     instead of an exercise that does not suit them, by its place; for a unilateral exercise by
 *     its first place
 */
public record Session(
    List<Exercise> warmUp,
    List<Superset> supersets,
    List<Exercise> coolDown,
    List<Map<At, Exercise>> modifications) {

  public Session {
    warmUp = List.copyOf(warmUp);
    supersets = List.copyOf(supersets);
    coolDown = List.copyOf(coolDown);
    modifications = modifications.stream().map(Ordered::map).toList();
  }

  /** A session without tracks. */
  public Session(List<Exercise> warmUp, List<Superset> supersets, List<Exercise> coolDown) {
    this(warmUp, supersets, coolDown, List.of());
  }

  /** The exercises of the supersets in order; a unilateral one once a superset. */
  public Stream<Exercise> work() {
    return supersets.stream().flatMap(superset -> superset.distinct().stream());
  }
}

package counterset.score;

import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.MovementPattern;
import counterset.model.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The movement patterns of some exercises by number, and the share that a problem wants of each.
 */
public final class Patterns {

  private final Map<String, Integer> ofExercise = new HashMap<>();
  private final Wanted wanted;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<String> ids = new ArrayList<>();
  private final List<Optional<MovementPattern>> kinds = new ArrayList<>();

  Patterns(Problem problem, Catalogue catalogue, Collection<Exercise> exercises) {
    this.wanted = Wanted.of(problem, catalogue);
    catalogue.wants().patterns().forEach(pattern -> add(pattern.id(), Optional.of(pattern)));
    for (Exercise exercise : exercises) {
      Optional<MovementPattern> kind = catalogue.wants().patternOf(exercise);
      if (kind.isEmpty()) {
        add(exercise.pattern(), Optional.empty());
      }
      String id = kind.map(MovementPattern::id).orElse(exercise.pattern());
      ofExercise.put(exercise.id(), numbers.get(id));
    }
  }

  private void add(String id, Optional<MovementPattern> kind) {
    if (numbers.putIfAbsent(id, ids.size()) == null) {
      ids.add(id);
      kinds.add(kind);
    }
  }

  /** How many there are. */
  public int count() {
    return ids.size();
  }

  /** The number of an exercise's pattern, from 0. */
  int of(Exercise exercise) {
    return ofExercise.get(exercise.id());
  }

  public String id(int pattern) {
    return ids.get(pattern);
  }

  /** What the catalogue says of it; empty if it says nothing. */
  Optional<MovementPattern> kind(int pattern) {
    return kinds.get(pattern);
  }

  /** The share of the places that it is to get, 0 to 1. */
  double share(int pattern) {
    return wanted.share(ids.get(pattern));
  }

  /** Whether it is to get a share. */
  boolean isShared(String id) {
    return wanted.share(id) > 0;
  }

  /** Whether the catalogue says nothing of patterns. */
  boolean isEmpty() {
    return kinds.stream().allMatch(Optional::isEmpty);
  }

  /** Whether a session for this has the legs alone. */
  public boolean isForLegs() {
    return wanted.isForLegs();
  }

  /** Whether a session for this has the upper body alone: its presses may lie on the floor. */
  boolean isForUpperBody() {
    return wanted.isForUpperBody();
  }

  /** Whether the whole body is asked for. */
  boolean isWhole() {
    return wanted.isWhole();
  }

  /** What the problem wants. */
  Wanted wanted() {
    return wanted;
  }
}

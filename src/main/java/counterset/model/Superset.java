package counterset.model;

import java.util.List;

/**
 * The exercises of one superset by position.
 *
 * @param number from 1
 * @param exercises A, B, C in order; a unilateral exercise stands in two positions, left side then
 *     right; empty if nothing suitable was found
 */
public record Superset(int number, List<Exercise> exercises) {

  public Superset {
    exercises = List.copyOf(exercises);
  }

  /** Whether it is one unilateral exercise: one side, then the other. */
  public boolean isUnilateral() {
    return exercises.size() == 2
        && exercises.get(0).isUnilateral()
        && exercises.get(0).id().equals(exercises.get(1).id());
  }

  /** Its different exercises in order; a unilateral one once. */
  public List<Exercise> distinct() {
    return exercises.stream().distinct().toList();
  }
}

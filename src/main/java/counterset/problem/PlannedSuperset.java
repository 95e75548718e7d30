package counterset.problem;

import java.util.List;

/**
 * A superset as a plan file has it.
 *
 * @param number from 1
 * @param exercises ids by position; a unilateral exercise stands at every position of its superset
 */
public record PlannedSuperset(int number, List<String> exercises) {

  public PlannedSuperset {
    exercises = List.copyOf(exercises);
  }
}

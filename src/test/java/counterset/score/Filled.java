package counterset.score;

import counterset.model.Exercise;
import counterset.model.Problem;
import java.util.List;

/**
 * A session as it is, whatever it breaks.
 *
 * @param exercises what may stand in it; all that stands in it is there
 * @param places superset by superset, null for a hole
 * @param standIns by track, what its followers do instead by place; null where there is nothing
 */
record Filled(
    Problem problem,
    List<Exercise> exercises,
    List<Exercise> places,
    List<List<Exercise>> standIns) {

  int supersets() {
    return places.size() / problem.clock().perSuperset();
  }
}

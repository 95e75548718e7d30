package counterset.report;

import counterset.explain.Difference;
import counterset.model.At;
import counterset.model.Exercise;
import counterset.model.PlanScore;
import java.util.List;
import java.util.Optional;

/**
 * One exercise that could stand at a place instead of what stands there.
 *
 * @param number in the list that is chosen from, from 1; empty if it would break a rule
 * @param places where the session changes, in order
 * @param partner what fills the other place of the superset where that came free
 * @param score of the whole session with it
 * @param differences what changes in points, the largest first
 * @param follows what else changes, as clauses
 */
public record SwapChoice(
    Optional<Integer> number,
    Exercise exercise,
    List<At> places,
    Optional<Exercise> partner,
    PlanScore score,
    List<Difference> differences,
    List<String> follows) {

  public SwapChoice {
    places = List.copyOf(places);
    differences = List.copyOf(differences);
    follows = List.copyOf(follows);
  }
}

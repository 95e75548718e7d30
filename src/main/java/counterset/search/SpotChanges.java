package counterset.search;

import ai.timefold.solver.core.preview.api.domain.metamodel.PlanningVariableMetaModel;
import counterset.score.Candidate;
import java.util.Arrays;

/** Takes in what spots of one session are to hold, to make a move of it. */
final class SpotChanges {

  private final int[] indexes;
  private final Candidate[] candidates;
  private int size;

  SpotChanges(int most) {
    indexes = new int[most];
    candidates = new Candidate[most];
  }

  void clear() {
    size = 0;
  }

  int size() {
    return size;
  }

  void add(int index, Candidate candidate) {
    indexes[size] = index;
    candidates[size++] = candidate;
  }

  /**
   * The move.
   *
   * @param offset the number of the first spot of the session
   */
  DraftMove move(
      PlanningVariableMetaModel<Draft, Spot, Candidate> variable, Spot[] spots, int offset) {
    Spot[] changed = new Spot[size];
    for (int i = 0; i < size; i++) {
      changed[i] = spots[offset + indexes[i]];
    }
    return new DraftMove(variable, changed, Arrays.copyOf(candidates, size));
  }
}

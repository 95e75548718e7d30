package counterset.training;

import java.time.LocalDate;
import java.util.List;

/**
 * What was lifted in one exercise on one day, with the mass of the last set.
 *
 * @param kg the mass of one piece
 * @param reps the repetitions of the sets with it, in order; never empty
 */
public record Lifted(LocalDate date, double kg, List<Integer> reps) {

  public Lifted {
    reps = List.copyOf(reps);
  }

  /** The repetitions of the last set. */
  public int lastSet() {
    return reps.get(reps.size() - 1);
  }
}

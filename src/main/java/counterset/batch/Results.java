package counterset.batch;

import counterset.json.BadRequest;
import counterset.model.Plan;
import counterset.model.WeekPlan;

/** The result files of a batch. May be used from any thread. */
public interface Results {

  /** Whether all those of a file of the batch are there. */
  boolean areAllThere(String file);

  /** Whether one of those of a file of the batch is there. */
  boolean isAnyThere(String file);

  /**
   * Writes those of a file, whole or not at all.
   *
   * @throws BadRequest if they cannot be written
   */
  void write(String file, Plan plan);

  /**
   * Writes those of a file, whole or not at all.
   *
   * @throws BadRequest if they cannot be written
   */
  void write(String file, WeekPlan week);
}

package counterset.solve;

import counterset.model.Catalogue;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import java.util.List;

/** Plans several weeks, one after the other. */
public final class BlockPlanner {

  /**
   * A planner.
   *
   * @param version of this program, for the notes in plans
   */
  public BlockPlanner(Catalogue catalogue, String version) {}

  /** Plans a block. */
  public List<WeekPlan> plan(WeekProblem problem, int weeks, Limit limit) {
    throw new UnsupportedOperationException("A block cannot be planned yet.");
  }

  /** Ends the block soon, with the best found so far. May be called from any thread. */
  public void stop() {}
}

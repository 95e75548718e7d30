package counterset.solve;

import counterset.model.Catalogue;
import counterset.model.Session;
import counterset.model.SolverNote;
import counterset.model.WeekPlan;
import counterset.model.WeekProblem;
import java.util.List;

/** Plans the sessions of a week together, or scores a week that somebody else planned. */
public final class WeekPlanner {

  /**
   * A planner.
   *
   * @param version of this program, for the notes in plans
   */
  public WeekPlanner(Catalogue catalogue, String version) {}

  /** Plans a week. */
  public WeekPlan plan(WeekProblem problem, Limit limit) {
    throw new UnsupportedOperationException("A week cannot be planned yet.");
  }

  /**
   * Scores a week as it is, whatever it breaks.
   *
   * @param sessions in the order of the problem
   */
  public WeekPlan score(WeekProblem problem, List<Session> sessions, SolverNote note) {
    throw new UnsupportedOperationException("A week cannot be scored yet.");
  }

  /**
   * Ends a week that is being planned soon, with the best found so far. May be called from any
   * thread.
   */
  public void stop() {}
}

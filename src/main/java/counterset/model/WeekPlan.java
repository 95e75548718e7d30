package counterset.model;

import java.util.List;

/**
 * A planned week.
 *
 * @param plans of the sessions, in the order of the problem; each scored by itself
 * @param score of the week: the sum of the plans' and what the constraints of the week add; its
 *     lines are those of the week alone
 * @param matches every match of every constraint of the week
 * @param sets by target of any session, in the order they come up, then by muscle group that only
 *     has a range: what the week adds up to
 */
public record WeekPlan(
    WeekProblem problem,
    List<Plan> plans,
    PlanScore score,
    List<WeekMatch> matches,
    List<WeekSets> sets,
    SolverNote solver) {

  public WeekPlan {
    plans = List.copyOf(plans);
    matches = List.copyOf(matches);
    sets = List.copyOf(sets);
  }

  /** Whether it keeps the rules of the week, and each session can be led. */
  public boolean canBeLed() {
    return score.feasible() && plans.stream().allMatch(Plan::canBeLed);
  }

  /**
   * One place where a constraint of the week matches.
   *
   * @param constraint its id
   * @param amount units of the constraint's weight, at least 1
   * @param points what it adds to the score of its level; negative for a cost
   * @param sessions their numbers in the problem, from 0; -1 for one before the week
   * @param subject the muscle group, exercise or family that it is about
   */
  public record WeekMatch(
      String constraint, int amount, int points, List<Integer> sessions, String subject) {

    public WeekMatch {
      sessions = List.copyOf(sessions);
    }
  }

  /**
   * The sets of one target.
   *
   * @param halfSetsByDay by session, in halves, direct ones counted as two
   * @param days on how many it is trained directly
   */
  public record WeekSets(
      String muscle, List<Integer> halfSetsByDay, int days, WeekProblem.SetRange range) {

    public WeekSets {
      halfSetsByDay = List.copyOf(halfSetsByDay);
    }

    /** All sets of the week, in halves. */
    public int halfSets() {
      return halfSetsByDay.stream().mapToInt(Integer::intValue).sum();
    }
  }
}

package counterset.model;

import java.util.List;

/**
 * The score of a plan.
 *
 * @param hard broken rules, at most 0
 * @param medium unmet wishes that matter most, at most 0
 * @param soft points for everything else
 * @param lines one for each constraint, in the order of the catalogue of constraints
 */
public record PlanScore(int hard, int medium, int soft, List<Line> lines) {

  public PlanScore {
    lines = List.copyOf(lines);
  }

  /** Whether no rule is broken. */
  public boolean feasible() {
    return hard >= 0;
  }

  /**
   * What one constraint adds.
   *
   * @param level {@code hard}, {@code medium} or {@code soft}
   * @param weight the points of one unit
   * @param matches how often it matches
   * @param score what that adds up to; negative for a cost
   * @param sentence what the constraint wants, as a coach would say it
   */
  public record Line(
      String id, String level, int weight, int matches, int score, String sentence) {}
}

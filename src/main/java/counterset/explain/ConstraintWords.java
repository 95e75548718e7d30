package counterset.explain;

import counterset.planning.constraints.SessionConstraint;
import counterset.planning.constraints.WeekConstraint;
import java.util.ArrayList;
import java.util.List;

/**
 * One entry of the catalogue of constraints.
 *
 * @param scope {@code session} or {@code week}
 * @param level {@code hard}, {@code medium} or {@code soft}
 * @param weight the points of one unit unless a problem says otherwise
 * @param reward whether it earns points instead of costing them
 * @param sentence what it wants
 * @param unit what its weight is counted by
 */
public record ConstraintWords(
    String id,
    String scope,
    String level,
    int weight,
    boolean reward,
    String sentence,
    String unit) {

  /** All constraints, those of a session first, each in the order of its catalogue. */
  public static List<ConstraintWords> all() {
    List<ConstraintWords> all = new ArrayList<>();
    for (SessionConstraint constraint : SessionConstraint.values()) {
      all.add(
          new ConstraintWords(
              constraint.id(),
              "session",
              constraint.level().id(),
              constraint.defaultWeight(),
              constraint.isReward(),
              constraint.sentence(),
              constraint.unit()));
    }
    for (WeekConstraint constraint : WeekConstraint.values()) {
      all.add(
          new ConstraintWords(
              constraint.id(),
              "week",
              constraint.level().id(),
              constraint.defaultWeight(),
              false,
              constraint.sentence(),
              constraint.unit()));
    }
    return all;
  }
}

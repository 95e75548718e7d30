package counterset.planning.scoring;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoft.HardMediumSoftScore;
import counterset.model.Problem;
import counterset.planning.constraints.SessionConstraint;
import java.util.Arrays;

/** Adds matches up to a score. */
final class ScoreSum implements ScoreSink {

  private static final int LEVELS = SessionConstraint.Level.values().length;

  private final int[] points;
  private final int[] level;
  private final int[] sum = new int[LEVELS];

  ScoreSum(Problem problem) {
    SessionConstraint[] constraints = SessionConstraint.values();
    points = new int[constraints.length];
    level = new int[constraints.length];
    for (SessionConstraint constraint : constraints) {
      int weight = constraint.weight(problem);
      points[constraint.ordinal()] = constraint.isReward() ? weight : -weight;
      level[constraint.ordinal()] = constraint.level().ordinal();
    }
  }

  void reset() {
    Arrays.fill(sum, 0);
  }

  @Override
  public void match(SessionConstraint constraint, int amount, int first, int second, int detail) {
    int ordinal = constraint.ordinal();
    sum[level[ordinal]] += points[ordinal] * amount;
  }

  HardMediumSoftScore score() {
    return HardMediumSoftScore.of(sum[0], sum[1], sum[2]);
  }
}

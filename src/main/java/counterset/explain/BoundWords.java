package counterset.explain;

import counterset.model.Bound;
import counterset.model.PlanScore;

/** How much better than a plan any other could be, in one sentence. */
public final class BoundWords {

  private static final int WHOLE = 100;

  private BoundWords() {}

  /** Such as {@code At most 12 points more are possible (limit +40): at most 43 % better.} */
  public static String of(Bound bound, PlanScore score) {
    if (!score.feasible()) {
      return "No limit applies: this session breaks rules.";
    }
    String among =
        score.medium() == 0 ? "" : " among sessions that leave no more of the wishes unmet";
    int gap = bound.soft() - score.soft();
    if (gap <= 0) {
      return among.isEmpty()
          ? "No better plan exists: proved."
          : "No better plan exists" + among + ": proved.";
    }
    String points = gap == 1 ? "1 point more is" : gap + " points more are";
    return "At most "
        + points
        + " possible"
        + among
        + " (limit "
        + ScoreWords.points(bound.soft())
        + ")"
        + percent(gap, score.soft())
        + ".";
  }

  /** Rounded up; only of a plan that has points, and where it is less than as much again. */
  private static String percent(int gap, int soft) {
    if (soft <= 0 || gap > soft) {
      return "";
    }
    long percent = ((long) WHOLE * gap + soft - 1) / soft;
    return ": at most " + percent + " % better";
  }
}

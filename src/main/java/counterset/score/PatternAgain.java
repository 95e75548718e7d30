package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * A superset does not open with the movement pattern that closed the last one; a unit is a time.
 */
public final class PatternAgain extends StepConstraint implements MatchByMatch {

  PatternAgain() {
    super(
        "patternAgain",
        points(8),
        "A superset opens with another movement pattern than closed the last.",
        "per time",
        "The same pattern across a rest");
  }

  @Override
  public int measure(Step step) {
    boolean same = step.before().merit().pattern() == step.after().merit().pattern();
    return same && !step.isInside() && step.isNew() ? 1 : 0;
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "time");
  }

  @Override
  public String said(Told told) {
    return "the same movement pattern before and after a rest";
  }

  @Override
  public String went(Told told) {
    return "no longer " + said(told);
  }

  @Override
  public String total(Total total) {
    return "the same movement pattern stands before and after a rest " + total.less() + " often";
  }
}

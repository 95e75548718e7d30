package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/** Changeovers are short; a unit is a point. A rest is there to be used, to its half. */
public final class ChangeoverSeconds extends StepConstraint {

  ChangeoverSeconds() {
    super(
        "changeoverSeconds",
        points(1),
        "Changeovers are short.",
        "1.8 a second beyond 3 inside a superset, 0.3 a second beyond half of a rest",
        "Changeover time");
  }

  private static final int FREE_INSIDE = 3;
  private static final double INSIDE = 1.8;
  private static final double ACROSS = 0.3;

  @Override
  public int measure(Step step) {
    double dear =
        step.isInside()
            ? INSIDE * (step.seconds() - FREE_INSIDE)
            : ACROSS * (step.seconds() - step.room() / 2.0);
    return (int) Math.max(0, Math.round(dear));
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(matches.size(), "long changeover");
  }

  @Override
  public String said(Told told) {
    return "a long changeover";
  }

  @Override
  public String total(Total total) {
    return "changing over takes " + (total.better() ? "less long" : "longer");
  }
}

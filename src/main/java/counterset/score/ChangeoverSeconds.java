package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/** Changeovers are short; a unit is a second. */
public final class ChangeoverSeconds extends StepConstraint {

  ChangeoverSeconds() {
    super(
        "changeoverSeconds", points(1), "Changeovers are short.", "per second", "Changeover time");
  }

  @Override
  public int measure(Step step) {
    return step.seconds();
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return amount + " s, over " + English.count(matches.size(), "changeover");
  }

  @Override
  public String said(Told told) {
    return "changing over takes " + told.amount() + " s";
  }

  @Override
  public String total(Total total) {
    return "changing over takes " + total.amount() + " s " + (total.better() ? "less" : "longer");
  }
}

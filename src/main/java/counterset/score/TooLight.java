package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * The work averages at least moderate intensity; a unit is a step of intensity short of 2 a
 * position.
 */
public final class TooLight extends CountConstraint {

  TooLight() {
    super(
        "tooLight",
        points(3),
        "The work averages at least moderate intensity.",
        "per step of intensity short of 2 a position",
        "Lighter than moderate on the whole");
  }

  private static final int MODERATE = 2;

  @Override
  public Source source() {
    return Source.POSITIONS;
  }

  @Override
  public int ofPosition(Candidate exercise) {
    return MODERATE - exercise.intensity();
  }

  @Override
  public int measure(SessionFacts facts, int tag, int lightness) {
    return Math.max(0, lightness);
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "step");
  }

  @Override
  public String said(Told told) {
    return "the work is lighter than moderate on the whole, by "
        + English.count(told.amount(), "step");
  }

  @Override
  public String total(Total total) {
    return "the work is " + (total.better() ? "heavier" : "lighter") + " on the whole";
  }
}

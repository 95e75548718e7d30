package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * Heavy work comes before light work; a unit is a step of intensity by which the later of two
 * exercises is heavier.
 */
public final class LightBeforeHeavy extends OrderConstraint {

  LightBeforeHeavy() {
    super(
        "lightBeforeHeavy",
        points(2),
        "Heavy work comes before light work.",
        "per step of intensity by which the later of two exercises is heavier",
        "Light before heavy");
  }

  private static final int INTENSITIES = 3;

  @Override
  public int classes() {
    return INTENSITIES;
  }

  @Override
  public int classOf(Candidate exercise) {
    return exercise.intensity() - 1;
  }

  @Override
  public int measure(int earlier, int later) {
    return Math.max(0, later - earlier);
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "step") + ", over " + English.count(matches.size(), "pair");
  }

  @Override
  public String said(Told told) {
    return told.exercise() + " comes before " + told.last() + ", which is heavier work";
  }

  @Override
  public String total(Total total) {
    return "light work comes before heavier work " + total.less() + " often";
  }
}

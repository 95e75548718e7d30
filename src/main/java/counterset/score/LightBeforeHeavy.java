package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * Heavy work comes before light work; a unit is a step of the order of work (power, big lifts,
 * several joints, one joint, easy) by which the later of two exercises is heavier. Work on the
 * floor begins anew: it comes last, however heavy, unless the session is for the upper body, whose
 * presses lie there.
 */
public final class LightBeforeHeavy extends OrderConstraint {

  LightBeforeHeavy() {
    super(
        "lightBeforeHeavy",
        points(2),
        "Heavy work comes before light work.",
        "per step by which the later of two exercises is heavier, without light standing work before the floor",
        "Light before heavy");
  }

  @Override
  public int classes() {
    return 2 * Merit.TIERS;
  }

  @Override
  public int classOf(Candidate exercise) {
    return exercise.merit().tier() + (exercise.merit().floorLast() ? Merit.TIERS : 0);
  }

  @Override
  public int measure(int earlier, int later) {
    boolean goesDown = earlier < Merit.TIERS && later >= Merit.TIERS;
    return goesDown ? 0 : Math.max(0, later % Merit.TIERS - earlier % Merit.TIERS);
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

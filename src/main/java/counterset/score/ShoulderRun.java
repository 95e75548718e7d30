package counterset.score;

/** The shoulders do not press or bear for long. */
public final class ShoulderRun extends FatigueRun {

  ShoulderRun() {
    super("shoulderRun", Fatigue.SHOULDER, "the shoulder");
  }
}

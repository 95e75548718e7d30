package counterset.score;

/** The lower back does not bear for long. */
public final class BackRun extends FatigueRun {

  BackRun() {
    super("backRun", Fatigue.BACK, "the lower back");
  }
}

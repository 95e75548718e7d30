package counterset.score;

/** The hands do not hold something heavy for long. */
public final class GripRun extends FatigueRun {

  GripRun() {
    super("gripRun", Fatigue.GRIP, "the grip");
  }
}

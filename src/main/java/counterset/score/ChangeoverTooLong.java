package counterset.score;

/** Every changeover fits in its pause, on each track too; a unit is a second too long. */
public final class ChangeoverTooLong extends StepConstraint {

  ChangeoverTooLong() {
    super(
        "changeoverTooLong",
        Level.HARD,
        1,
        "Every changeover fits in its pause, on each track too.",
        "per second too long");
  }

  @Override
  public int measure(Step step) {
    return Math.max(0, step.seconds() - step.room());
  }

  @Override
  public boolean isForTracks() {
    return true;
  }
}

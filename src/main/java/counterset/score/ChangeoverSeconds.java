package counterset.score;

/** Changeovers are short; a unit is a second. */
public final class ChangeoverSeconds extends StepConstraint {

  ChangeoverSeconds() {
    super("changeoverSeconds", Level.SOFT, 1, "Changeovers are short.", "per second");
  }

  @Override
  public int measure(Step step) {
    return step.seconds();
  }
}

package counterset.score;

/** Neighbours do not strain the same joint; a unit is a joint. */
public final class JointAgain extends StepConstraint {

  JointAgain() {
    super(
        "jointAgain",
        Level.SOFT,
        6,
        "Neighbours do not strain the same joint.",
        "per joint that both ask 2 or more of");
  }

  @Override
  public int measure(Step step) {
    return step.isNew() ? Integer.bitCount(step.before().strained() & step.after().strained()) : 0;
  }
}

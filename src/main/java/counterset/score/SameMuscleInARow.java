package counterset.score;

/** Neighbours train different muscle groups first; a unit is a point. */
public final class SameMuscleInARow extends StepConstraint {

  SameMuscleInARow() {
    super(
        "sameMuscleInARow",
        Level.SOFT,
        1,
        "Neighbours train different muscles first.",
        "15 inside a superset, 6 across a rest");
  }

  private static final int INSIDE = 15;
  private static final int ACROSS = 6;

  @Override
  public int measure(Step step) {
    boolean same = (step.before().primary() & step.after().primary()) != 0;
    if (!same || !step.isNew() || step.isSameMuscleAsked()) {
      return 0;
    }
    return step.isInside() ? INSIDE : ACROSS;
  }
}

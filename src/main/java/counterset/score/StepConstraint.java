package counterset.score;

/** Sees two neighbours in time and the state of the room between them. */
public abstract class StepConstraint extends PlanConstraint {

  StepConstraint(String id, Weight weight, String sentence, String unit, String topic) {
    super(id, weight, sentence, unit, topic);
  }

  /** Units for a step, at least 0. */
  public abstract int measure(Step step);

  /** Whether it holds for what the followers of a track do as well. */
  public boolean isForTracks() {
    return false;
  }

  @Override
  public final boolean isBetweenPlaces() {
    return true;
  }

  @Override
  public final boolean tellsPlaces() {
    return true;
  }
}

package counterset.score;

/** Sees two neighbours in time and the state of the room between them. */
public abstract class StepConstraint extends Constraint {

  StepConstraint(String id, Level level, int weight, String sentence, String unit) {
    super(id, level, weight, sentence, unit);
  }

  /** Units for a step, at least 0. */
  public abstract int measure(Step step);

  /** Whether it holds for what the followers of a track do as well. */
  public boolean isForTracks() {
    return false;
  }
}

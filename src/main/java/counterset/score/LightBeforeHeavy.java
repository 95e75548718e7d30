package counterset.score;

/**
 * Heavy work comes before light work; a unit is a step of intensity by which the later of two
 * exercises is heavier.
 */
public final class LightBeforeHeavy extends OrderConstraint {

  LightBeforeHeavy() {
    super(
        "lightBeforeHeavy",
        Level.SOFT,
        2,
        "Heavy work comes before light work.",
        "per step of intensity by which the later of two exercises is heavier");
  }

  private static final int INTENSITIES = 3;

  @Override
  public int classes() {
    return INTENSITIES;
  }

  @Override
  public int classOf(Candidate exercise) {
    return exercise.intensity() - 1;
  }

  @Override
  public int measure(int earlier, int later) {
    return Math.max(0, later - earlier);
  }
}

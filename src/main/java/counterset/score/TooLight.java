package counterset.score;

/**
 * The work averages at least moderate intensity; a unit is a step of intensity short of 2 a
 * position.
 */
public final class TooLight extends CountConstraint {

  TooLight() {
    super(
        "tooLight",
        Level.SOFT,
        3,
        "The work averages at least moderate intensity.",
        "per step of intensity short of 2 a position");
  }

  private static final int MODERATE = 2;

  @Override
  public Source source() {
    return Source.POSITIONS;
  }

  @Override
  public int ofPosition(Candidate exercise) {
    return MODERATE - exercise.intensity();
  }

  @Override
  public int measure(SessionFacts facts, int tag, int lightness) {
    return Math.max(0, lightness);
  }
}

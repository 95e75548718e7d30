package counterset.score;

/** The work matches the client's level; a unit is a step below it. */
public final class TooEasy extends PlaceConstraint {

  TooEasy() {
    super("tooEasy", Level.SOFT, 3, "The work matches the client's level.", "per step below it");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.stepsBelow();
  }
}

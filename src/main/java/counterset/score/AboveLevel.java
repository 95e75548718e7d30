package counterset.score;

/** Nothing is above the client's level; a unit is an exercise. */
public final class AboveLevel extends PlaceConstraint {

  AboveLevel() {
    super("aboveLevel", Level.HARD, 1, "Nothing is above the client's level.", "per exercise");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.aboveLevel() ? 1 : 0;
  }
}

package counterset.score;

/** Nothing that the coach excluded is used; a unit is an exercise. */
public final class Excluded extends PlaceConstraint {

  Excluded() {
    super("excluded", Level.HARD, 1, "Nothing that the coach excluded is used.", "per exercise");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.excluded() ? 1 : 0;
  }
}

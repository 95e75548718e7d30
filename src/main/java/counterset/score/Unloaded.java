package counterset.score;

/** The client's equipment is lifted, not left lying; a unit is a position. */
public final class Unloaded extends PlaceConstraint {

  Unloaded() {
    super(
        "unloaded",
        Level.SOFT,
        8,
        "The client's equipment is lifted, not left lying.",
        "per position without it; a chair or mat is no load");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.loaded() ? 0 : 1;
  }

  @Override
  public boolean isPerPosition() {
    return true;
  }
}

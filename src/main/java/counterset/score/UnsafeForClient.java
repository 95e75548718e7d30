package counterset.score;

/** Nothing that a limitation forbids is done; a unit is an exercise and limitation. */
public final class UnsafeForClient extends PlaceConstraint {

  UnsafeForClient() {
    super(
        "unsafeForClient",
        Level.HARD,
        1,
        "Nothing that a limitation of the session forbids is done.",
        "per exercise and limitation");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.unsafe();
  }
}

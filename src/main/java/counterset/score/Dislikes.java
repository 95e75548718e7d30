package counterset.score;

/** What the client dislikes is not welcome; a unit is an exercise. */
public final class Dislikes extends PlaceConstraint {

  Dislikes() {
    super("dislikes", Level.SOFT, 10, "What the client dislikes is not.", "per exercise");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.disliked() ? 1 : 0;
  }
}

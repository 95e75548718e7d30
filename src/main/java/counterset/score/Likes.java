package counterset.score;

/** What the client likes is welcome; a unit is an exercise. */
public final class Likes extends PlaceConstraint {

  Likes() {
    super("likes", Level.SOFT, 10, "What the client likes is welcome.", "per exercise");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.liked() ? 1 : 0;
  }

  @Override
  public boolean isReward() {
    return true;
  }
}

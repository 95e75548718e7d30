package counterset.score;

import static counterset.score.Weight.points;

/** What the client likes is welcome; a unit is an exercise. */
public final class Likes extends PlaceConstraint {

  Likes() {
    super("likes", points(10), "What the client likes is welcome.", "per exercise", "Liked");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.liked() ? 1 : 0;
  }

  @Override
  public boolean isReward() {
    return true;
  }

  @Override
  String does(Told told) {
    return "is liked";
  }

  @Override
  public String total(Total total) {
    return (total.better() ? "more" : "less") + " of what the client likes";
  }
}

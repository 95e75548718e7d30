package counterset.score;

import static counterset.score.Weight.points;

/** What the client dislikes is not welcome; a unit is an exercise. */
public final class Dislikes extends PlaceConstraint {

  Dislikes() {
    super("dislikes", points(10), "What the client dislikes is not.", "per exercise", "Disliked");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.disliked() ? 1 : 0;
  }

  @Override
  String does(Told told) {
    return "is disliked";
  }

  @Override
  public String total(Total total) {
    return total.less() + " of what the client dislikes";
  }
}

package counterset.score;

import static counterset.score.Weight.points;

/** Of a movement, the hardest version that suits is done; a unit is a position. */
public final class Softer extends PlaceConstraint {

  Softer() {
    super(
        "softer",
        points(9),
        "Of a movement, the hardest version that suits is done.",
        "per position, 2 if the harder version is on the client's bench",
        "Softer versions");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.merit().softer();
  }

  @Override
  public boolean isPerPosition() {
    return true;
  }

  @Override
  String does(Told told) {
    return "has a harder version that suits";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " exercises have a harder version that suits";
  }
}

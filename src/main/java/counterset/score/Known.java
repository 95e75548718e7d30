package counterset.score;

import static counterset.score.Weight.points;

/**
 * Staples of the trade are preferred; a unit is a position with an exercise that is known but no
 * staple.
 */
public final class Known extends PlaceConstraint {

  Known() {
    super(
        "known",
        points(5),
        "Staples of the trade come before lesser-known exercises.",
        "per position with an exercise that is no staple",
        "Exercises that are no staples");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.merit().standing() == 2 ? 1 : 0;
  }

  @Override
  public boolean isPerPosition() {
    return true;
  }

  @Override
  String does(Told told) {
    return "is no staple";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " exercises are no staples";
  }
}

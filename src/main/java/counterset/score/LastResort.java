package counterset.score;

import static counterset.score.Weight.points;

/** Exercises that nobody would choose freely are left out; a unit is a position. */
public final class LastResort extends PlaceConstraint {

  LastResort() {
    super(
        "lastResort",
        points(24),
        "Exercises of last resort are left out.",
        "per position",
        "Exercises of last resort");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.merit().standing() == 1 ? 1 : 0;
  }

  @Override
  public boolean isPerPosition() {
    return true;
  }

  @Override
  String does(Told told) {
    return "is a last resort";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " exercises are a last resort";
  }
}

package counterset.score;

import static counterset.score.Weight.points;

/**
 * Movements go through their full range unless a limitation or the level asks for less; a unit is a
 * position.
 */
public final class PartialRange extends PlaceConstraint {

  PartialRange() {
    super(
        "partialRange",
        points(8),
        "Movements go through their full range.",
        "per position, for a client without a limitation above level 1",
        "Partial range");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.merit().partial() ? 1 : 0;
  }

  @Override
  public boolean isPerPosition() {
    return true;
  }

  @Override
  String does(Told told) {
    return "goes through part of its range";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " exercises go through part of their range";
  }
}

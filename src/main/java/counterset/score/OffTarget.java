package counterset.score;

import static counterset.score.Weight.points;

/** Every exercise trains something that is asked for; a unit is a position that does not. */
public final class OffTarget extends PlaceConstraint {

  OffTarget() {
    super(
        "offTarget",
        points(40),
        "Every exercise is work that was asked for.",
        "per position that does not",
        "Work that nobody asked for");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.merit().offTarget() ? 1 : 0;
  }

  @Override
  public boolean isPerPosition() {
    return true;
  }

  @Override
  String does(Told told) {
    return "is work that nobody asked for";
  }

  @Override
  public String total(Total total) {
    return total.less() + " work goes to what nobody asked for";
  }
}

package counterset.score;

import static counterset.score.Weight.points;

/** The work is hard enough to train something; a unit is a position that is easy for the client. */
public final class EasyWork extends PlaceConstraint {

  EasyWork() {
    super(
        "easyWork",
        points(16),
        "The work is hard enough to train something.",
        "per position",
        "Easy work");
  }

  @Override
  public int measure(Candidate exercise) {
    return !exercise.merit().isWorking() ? 1 : 0;
  }

  @Override
  public boolean isPerPosition() {
    return true;
  }

  @Override
  String does(Told told) {
    return "is easy for this client";
  }

  @Override
  public String total(Total total) {
    return total.less() + " work is easy for this client";
  }
}

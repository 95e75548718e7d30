package counterset.score;

import static counterset.score.Weight.points;

/** For the skilled the work is hard; a unit is a position that is not. */
public final class NotHard extends PlaceConstraint {

  NotHard() {
    super(
        "notHard",
        points(6),
        "For a client of level 3 the work is hard.",
        "per position that is not",
        "Work that could be harder");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.merit().notHard() ? 1 : 0;
  }

  @Override
  public boolean isPerPosition() {
    return true;
  }

  @Override
  String does(Told told) {
    return "could be harder";
  }

  @Override
  public String total(Total total) {
    return total.less() + " work could be harder";
  }
}

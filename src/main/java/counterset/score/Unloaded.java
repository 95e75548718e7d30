package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/** The client's equipment is lifted, not left lying; a unit is half a position, or a push-up. */
public final class Unloaded extends PlaceConstraint {

  Unloaded() {
    super(
        "unloaded",
        points(5),
        "The client's equipment is lifted, not left lying.",
        "2 per position without it where another exercise of the pattern lifts it, 1 for a push-up; a chair or mat is no load",
        "Without the client's equipment");
  }

  @Override
  public int measure(Candidate exercise) {
    return exercise.merit().unloaded();
  }

  @Override
  public boolean isPerPosition() {
    return true;
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(matches.size(), "position");
  }

  @Override
  String does(Told told) {
    return "leaves the client's equipment lying";
  }

  @Override
  public String total(Total total) {
    return total.less() + " work leaves the client's equipment lying";
  }
}

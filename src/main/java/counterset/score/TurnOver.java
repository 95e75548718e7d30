package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import counterset.model.Position;
import java.util.List;
import java.util.Set;

/**
 * On the floor one stays on the back, the front or the side for a while; a unit is a turn from one
 * to another.
 */
public final class TurnOver extends StepConstraint {

  private static final Set<Position> ON_THE_BACK = Set.of(Position.SUPINE, Position.FLOOR_SEATED);
  private static final Set<Position> ON_THE_SIDE = Set.of(Position.SIDE_LYING);

  TurnOver() {
    super(
        "turnOver",
        points(1),
        "On the floor one seldom turns over.",
        "per turn from back, front or side to another",
        "Turning over");
  }

  @Override
  public int measure(Step step) {
    boolean stays = step.before().floor() && step.after().floor();
    return stays && side(step.before()) != side(step.after()) ? 1 : 0;
  }

  private static int side(Candidate exercise) {
    Position position = exercise.exercise().position();
    return ON_THE_BACK.contains(position) ? 0 : ON_THE_SIDE.contains(position) ? 1 : 2;
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "turn");
  }

  @Override
  public String said(Told told) {
    return "a turn on the floor";
  }

  @Override
  public String total(Total total) {
    return "one turns over on the floor " + total.less() + " often";
  }
}

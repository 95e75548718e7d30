package counterset.score;

import static counterset.score.Weight.rule;

import counterset.model.Match;
import java.util.List;

/** A one-sided exercise fills one superset of two; a unit is an exercise that does not. */
public final class SidesSplit extends SupersetConstraint implements MatchByMatch {

  SidesSplit() {
    super(
        "sidesSplit",
        rule("Maybe give it both positions of one superset of two."),
        "A one-sided exercise fills one superset: one side, then the other.",
        "per superset that breaks it",
        "One-sided exercises without their other side");
  }

  @Override
  void measure(Group superset, Matches matches) {
    if (superset.size() == 2 && superset.at(0) == superset.at(1)) {
      return;
    }
    for (int position = 0; position < superset.size(); position++) {
      Candidate exercise = superset.at(position);
      if (exercise != null && exercise.unilateral() && !superset.isSecondSide(position)) {
        matches.match(1, position, Sink.NOWHERE);
      }
    }
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return String.valueOf(amount);
  }

  @Override
  public String said(Told told) {
    return told.exercises()
        + " is one-sided, and its superset does not hold left side and right side";
  }

  @Override
  public String came(Told told) {
    return told.exercise() + " is left without its other side";
  }

  @Override
  public String went(Told told) {
    return told.exercise() + " no longer lacks its other side";
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " one-sided exercises lack their other side";
  }
}

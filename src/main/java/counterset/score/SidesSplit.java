package counterset.score;

/** A one-sided exercise fills one superset of two; a unit is an exercise that does not. */
public final class SidesSplit extends SupersetConstraint {

  SidesSplit() {
    super(
        "sidesSplit",
        Level.HARD,
        1,
        "A one-sided exercise fills one superset: one side, then the other.",
        "per superset that breaks it");
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
}

package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Exercise;
import counterset.model.Match;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Neighbours train different muscle groups first; a unit is a point. */
public final class SameMuscleInARow extends StepConstraint implements MatchByMatch {

  SameMuscleInARow() {
    super(
        "sameMuscleInARow",
        points(1),
        "Across a rest, neighbours train different muscles first.",
        "6 across a rest, 1 where few movement patterns are wanted",
        "The same main muscle twice running");
  }

  private static final int MANY = 6;
  private static final int WHERE_FEW = 1;

  @Override
  public int measure(Step step) {
    boolean same = (step.before().primary() & step.after().primary()) != 0;
    if (!same || step.isInside() || !step.isNew() || step.isSameMuscleAsked()) {
      return 0;
    }
    return step.isNarrow() ? WHERE_FEW : MANY;
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(matches.size(), "time");
  }

  @Override
  public String said(Told told) {
    List<Exercise> both = told.work();
    Set<String> muscles = new LinkedHashSet<>(both.get(0).primary());
    muscles.retainAll(both.get(both.size() - 1).primary());
    return told.names().muscles(muscles) + " twice running";
  }

  @Override
  public String went(Told told) {
    return "no longer " + said(told);
  }

  @Override
  public String total(Total total) {
    return "the same muscle works twice running " + total.less() + " often";
  }
}

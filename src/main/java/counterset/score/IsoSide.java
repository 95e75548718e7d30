package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Match;
import java.util.List;

/**
 * Outside sessions for the legs, small one-sided work does not take whole supersets; a unit is such
 * a superset.
 */
public final class IsoSide extends CountConstraint {

  IsoSide() {
    super(
        "isoSide",
        points(8),
        "Small one-sided work does not take whole supersets, outside sessions for the legs.",
        "per superset",
        "Whole supersets for small one-sided work");
  }

  @Override
  public void ofExercise(SessionFacts facts, Candidate exercise, Tags tags) {
    if (exercise.unilateral() && !exercise.exercise().multiJoint()) {
      tags.add(0, 1);
    }
  }

  @Override
  public int measure(SessionFacts facts, int tag, int supersets) {
    return facts.patterns().isForLegs() ? 0 : supersets;
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "superset");
  }

  @Override
  public String said(Told told) {
    return "small one-sided work takes " + English.count(told.amount(), "whole superset");
  }

  @Override
  public String total(Total total) {
    return total.fewer() + " supersets go to small one-sided work";
  }
}

package counterset.score;

import static counterset.score.Weight.points;

import counterset.model.English;
import counterset.model.Joint;
import counterset.model.Match;
import java.util.List;
import java.util.stream.Stream;

/** Neighbours do not strain the same joint; a unit is a joint. */
public final class JointAgain extends StepConstraint implements MatchByMatch {

  JointAgain() {
    super(
        "jointAgain",
        points(3),
        "Neighbours do not strain the same joint.",
        "per joint that both ask 2 or more of",
        "The same joint strained twice running");
  }

  @Override
  public int measure(Step step) {
    return step.isNew() && !step.isInside() && !step.isNarrow()
        ? Integer.bitCount(step.before().strained() & step.after().strained())
        : 0;
  }

  @Override
  public String counted(int amount, List<Match> matches) {
    return English.count(amount, "time");
  }

  @Override
  public String said(Told told) {
    return "strain on " + joints(told) + " twice running";
  }

  @Override
  public String went(Told told) {
    return "no more " + said(told);
  }

  private static String joints(Told told) {
    return English.list(
        Stream.of(Joint.values())
            .filter(
                joint ->
                    told.work().stream().allMatch(it -> it.demandOn(joint) >= Candidates.STRAIN))
            .map(joint -> joint.id().replace('-', ' '))
            .toList());
  }

  @Override
  public boolean tellsParts() {
    return false;
  }

  @Override
  public String total(Total total) {
    return "the same joint is strained twice running " + total.less() + " often";
  }
}

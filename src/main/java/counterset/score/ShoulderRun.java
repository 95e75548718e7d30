package counterset.score;

import counterset.model.MovementPattern;
import java.util.Optional;
import java.util.stream.IntStream;

/** The shoulders do not press or bear for long. */
public final class ShoulderRun extends FatigueRun {

  ShoulderRun() {
    super("shoulderRun", Fatigue.SHOULDER, "the shoulder");
  }

  /** Where nothing is to be pushed, what bears on the hands can be spread. */
  @Override
  boolean countsWhereFew(SessionFacts facts) {
    return IntStream.range(0, facts.patterns().count())
        .filter(facts::isWanted)
        .mapToObj(facts.patterns()::kind)
        .flatMap(Optional::stream)
        .noneMatch(pattern -> pattern.group() == MovementPattern.Group.PUSH);
  }
}

package counterset.timeline;

import counterset.model.Exercise;
import counterset.model.Session;
import counterset.model.Side;
import counterset.model.Sides;
import counterset.model.Superset;
import counterset.timeline.Changeovers.Step;
import java.util.List;

/** Which side works when. */
final class Sideways {

  private Sideways() {}

  /** The side of a work interval: a unilateral exercise has its left side first. */
  static Side of(Step step, Session session) {
    if (!step.exercise().isUnilateral()) {
      return whole(step.exercise());
    }
    return isSecondSide(step, session) ? Side.RIGHT : Side.LEFT;
  }

  /** The side of an exercise that needs one interval only. */
  static Side whole(Exercise exercise) {
    return exercise.sides() == Sides.ALTERNATING ? Side.ALTERNATING : Side.BOTH;
  }

  private static boolean isSecondSide(Step step, Session session) {
    return session.supersets().stream()
        .filter(superset -> superset.number() == step.at().superset())
        .map(Superset::exercises)
        .map(exercises -> exercises.subList(0, step.at().position()))
        .flatMap(List::stream)
        .anyMatch(earlier -> earlier.id().equals(step.exercise().id()));
  }
}

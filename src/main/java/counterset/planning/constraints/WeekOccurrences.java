package counterset.planning.constraints;

import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;
import counterset.planning.WeekPlace;

/** {@link Occurrences}, of all the sessions of a week. */
final class WeekOccurrences {

  private WeekOccurrences() {}

  static UniConstraintStream<WeekPlace> of(ConstraintFactory factory) {
    return factory
        .forEach(WeekPlace.class)
        .ifNotExists(
            WeekPlace.class,
            Joiners.equal(WeekOccurrences::firstOfSuperset),
            Joiners.equal(WeekPlace::getCandidate),
            Joiners.greaterThan(WeekPlace::getPosition),
            Joiners.filtering((place, earlier) -> place.getCandidate().unilateral()));
  }

  private static int firstOfSuperset(WeekPlace place) {
    return place.getIndex() - place.getPosition();
  }
}

package counterset.planning.constraints;

import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import ai.timefold.solver.core.api.score.stream.bi.BiConstraintStream;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;
import counterset.planning.Place;

/**
 * The exercises of a session where both sides of a unilateral one in a superset count once, at its
 * first place.
 */
final class Occurrences {

  private Occurrences() {}

  static UniConstraintStream<Place> of(ConstraintFactory factory) {
    return factory
        .forEach(Place.class)
        .ifNotExists(
            Place.class,
            Joiners.equal(Place::getSuperset),
            Joiners.equal(Place::getCandidate),
            Joiners.greaterThan(Place::getPosition),
            Joiners.filtering((place, earlier) -> place.getCandidate().unilateral()));
  }

  /** Every two of them, the earlier first. */
  static BiConstraintStream<Place, Place> pairs(ConstraintFactory factory) {
    return of(factory).join(of(factory), Joiners.lessThan(Place::getIndex));
  }
}

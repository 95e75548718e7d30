package counterset.planning.constraints;

import static counterset.planning.constraints.SessionConstraint.*;

import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import counterset.model.Exercise;
import counterset.model.Keep;
import counterset.model.Need;
import counterset.model.Owned;
import counterset.model.Problem;
import counterset.planning.Place;
import counterset.planning.SessionFacts;
import java.util.List;

/** What must never happen: each of these is hard. */
final class SafetyConstraints {

  private SafetyConstraints() {}

  /**
   * No exercise, nor a variant of it, comes twice; the two sides of a unilateral one count once.
   */
  static Constraint exerciseRepeated(ConstraintFactory factory) {
    return EXERCISE_REPEATED.penalize(
        Occurrences.pairs(factory)
            .filter(
                (a, b) ->
                    a.getCandidate().exercise().root().equals(b.getCandidate().exercise().root())),
        (a, b) -> 1);
  }

  /** A one-sided exercise fills both positions of one superset: one side, then the other. */
  static Constraint sidesSplit(ConstraintFactory factory) {
    return SIDES_SPLIT.penalize(
        Occurrences.of(factory)
            .filter(place -> place.getCandidate().unilateral())
            .join(SessionFacts.class)
            .ifNotExists(
                Place.class,
                Joiners.equal((place, facts) -> place.getSuperset(), Place::getSuperset),
                Joiners.equal((place, facts) -> place.getCandidate(), Place::getCandidate),
                Joiners.lessThan((place, facts) -> place.getPosition(), Place::getPosition),
                Joiners.filtering((place, facts, other) -> facts.perSuperset() == 2)),
        (place, facts) -> 1);
  }

  /** Only equipment that the client has is used, in its count and load. */
  static Constraint equipmentMissing(ConstraintFactory factory) {
    return EQUIPMENT_MISSING.penalize(
        Occurrences.of(factory)
            .join(SessionFacts.class)
            .filter((place, facts) -> missing(place.getCandidate().exercise(), facts) > 0),
        (place, facts) -> missing(place.getCandidate().exercise(), facts));
  }

  private static int missing(Exercise exercise, SessionFacts facts) {
    List<Owned> owned = facts.problem().equipment();
    int missing = 0;
    for (Need need : exercise.needs()) {
      boolean there = facts.catalogue().equipment().get(need.equipment()).alwaysThere();
      missing += there || owned.stream().anyMatch(item -> item.serves(need)) ? 0 : 1;
    }
    return missing;
  }

  /** Nothing that a limitation of the session forbids is done. */
  static Constraint unsafeForClient(ConstraintFactory factory) {
    return UNSAFE_FOR_CLIENT.penalize(
        Occurrences.of(factory)
            .join(SessionFacts.class)
            .filter((place, facts) -> broken(place.getCandidate().exercise(), facts) > 0),
        (place, facts) -> broken(place.getCandidate().exercise(), facts));
  }

  private static int broken(Exercise exercise, SessionFacts facts) {
    return Math.toIntExact(
        facts.problem().limitations().stream()
            .map(facts.catalogue().limitations()::get)
            .filter(limitation -> !limitation.allows(exercise))
            .count());
  }

  /** The session ends within its minutes. */
  static Constraint clockOverrun(ConstraintFactory factory) {
    return CLOCK_OVERRUN.penalize(
        factory.forEach(SessionFacts.class).filter(facts -> facts.overrunSeconds() > 0),
        SessionFacts::overrunSeconds);
  }

  /** Exercises that the coach keeps stay where they are. */
  static Constraint keptMoved(ConstraintFactory factory) {
    return KEPT_MOVED.penalize(
        factory
            .forEach(SessionFacts.class)
            .flattenLast(facts -> facts.problem().keep())
            .ifNotExists(Place.class, Joiners.filtering(SafetyConstraints::isKept)),
        keep -> 1);
  }

  private static boolean isKept(Keep keep, Place place) {
    return place.at().equals(keep.at())
        && place.getCandidate().exercise().id().equals(keep.exercise());
  }

  /** Nothing is above the client's level. */
  static Constraint aboveLevel(ConstraintFactory factory) {
    return ABOVE_LEVEL.penalize(
        Occurrences.of(factory)
            .join(SessionFacts.class)
            .filter(
                (place, facts) ->
                    place.getCandidate().exercise().level() > facts.problem().level()),
        (place, facts) -> 1);
  }

  /** Nothing that the coach excluded is used. */
  static Constraint excluded(ConstraintFactory factory) {
    return EXCLUDED.penalize(
        Occurrences.of(factory)
            .join(SessionFacts.class)
            .filter(
                (place, facts) ->
                    Problem.names(facts.problem().exclude(), place.getCandidate().exercise())),
        (place, facts) -> 1);
  }
}

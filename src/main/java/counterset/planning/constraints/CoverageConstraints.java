package counterset.planning.constraints;

import static counterset.planning.constraints.SessionConstraint.*;

import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintCollectors;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;
import counterset.model.Exercise;
import counterset.model.MainLift;
import counterset.model.Owned;
import counterset.model.Target;
import counterset.planning.Candidate;
import counterset.planning.Place;
import counterset.planning.SessionFacts;
import counterset.planning.Shares;
import counterset.planning.constraints.TrackLine.Shortage;
import java.util.List;
import java.util.stream.Stream;

/** What the session exists for: targets, filled supersets, equipment put to use. */
final class CoverageConstraints {

  private CoverageConstraints() {}

  /** The exercises of a session, an empty list too, with its facts. */
  private static UniConstraintStream<Work> work(ConstraintFactory factory) {
    return factory
        .forEach(SessionFacts.class)
        .join(Occurrences.of(factory))
        .groupBy(
            (facts, place) -> facts,
            ConstraintCollectors.toList((facts, place) -> place.getCandidate().exercise()))
        .map(Work::new)
        .concat(
            factory
                .forEach(SessionFacts.class)
                .ifNotExists(Place.class, Joiners.filtering((facts, place) -> true))
                .map(facts -> new Work(facts, List.of())));
  }

  /**
   * Every target gets its direct sets, on each track too where the track can train it; a unit is a
   * missing set.
   */
  static Constraint targetUncovered(ConstraintFactory factory) {
    return TARGET_UNCOVERED.penalize(
        work(factory)
            .flattenLast(Work::volumes)
            .filter(volume -> volume.missing() > 0)
            .map(volume -> new Shortage(-1, volume.target().muscle(), volume.missing()))
            .concat(TrackLine.of(factory).flattenLast(TrackLine::shortages)),
        Shortage::sets);
  }

  /** Every target gets its share of the sets; a unit is a set squared. */
  static Constraint unevenVolume(ConstraintFactory factory) {
    return UNEVEN_VOLUME.penalize(
        work(factory).flattenLast(Work::volumes).filter(volume -> volume.away() > 0), Volume::away);
  }

  /** Every main lift for a target that the client can do is there; a unit is a main lift. */
  static Constraint mainLiftMissing(ConstraintFactory factory) {
    return MAIN_LIFT_MISSING.penalize(
        factory
            .forEach(SessionFacts.class)
            .flattenLast(CoverageConstraints::possibleLifts)
            .join(SessionFacts.class)
            .ifNotExists(
                Place.class,
                Joiners.filtering(
                    (lift, facts, place) ->
                        lift.isDoneBy(place.getCandidate().exercise(), facts.problem()))),
        (lift, facts) -> 1);
  }

  private static List<MainLift> possibleLifts(SessionFacts facts) {
    List<Exercise> possible =
        facts.candidates().stream()
            .filter(Candidate::usable)
            .map(Candidate::exercise)
            .filter(exercise -> facts.perSuperset() == 2 || !exercise.isUnilateral())
            .toList();
    return Stream.of(MainLift.values())
        .filter(lift -> possible.stream().anyMatch(e -> lift.isDoneBy(e, facts.problem())))
        .toList();
  }

  /** Every superset that the clock has room for is filled. */
  static Constraint supersetEmpty(ConstraintFactory factory) {
    return SUPERSET_EMPTY.penalize(
        factory
            .forEachIncludingUnassigned(Place.class)
            .filter(place -> place.getCandidate() == null)
            .groupBy(Place::getSuperset),
        superset -> 1);
  }

  /** All equipment that the coach listed is put to use; a unit is an item. */
  static Constraint equipmentUnused(ConstraintFactory factory) {
    return EQUIPMENT_UNUSED.penalize(
        factory
            .forEach(SessionFacts.class)
            .flattenLast(facts -> facts.problem().equipment())
            .join(SessionFacts.class)
            .ifNotExists(Place.class, Joiners.filtering(CoverageConstraints::isUsed)),
        (owned, facts) -> 1);
  }

  private static boolean isUsed(Owned owned, SessionFacts facts, Place place) {
    Exercise exercise = place.getCandidate().exercise();
    return exercise.needs().stream().anyMatch(need -> need.equipment().equals(owned.id()))
        || facts.catalogue().equipment().get(owned.id()).comfortIn().contains(exercise.position());
  }

  /** Every exercise that the coach asked for is there. */
  static Constraint includeMissing(ConstraintFactory factory) {
    return INCLUDE_MISSING.penalize(
        factory
            .forEach(SessionFacts.class)
            .flattenLast(facts -> facts.problem().include())
            .ifNotExists(
                Place.class,
                Joiners.filtering(
                    (wish, place) -> place.getCandidate().exercise().id().equals(wish))),
        wish -> 1);
  }

  private record Work(SessionFacts facts, List<Exercise> exercises) {

    List<Volume> volumes() {
      List<Target> targets = facts.problem().targets();
      int all = targets.stream().mapToInt(this::halfSets).sum();
      int emphases = targets.stream().mapToInt(Target::emphasis).sum();
      return targets.stream()
          .map(
              target ->
                  new Volume(
                      target,
                      target.minSets() - direct(target),
                      Shares.squaredDistance(halfSets(target), all, target.emphasis(), emphases)))
          .toList();
    }

    private int direct(Target target) {
      long sets =
          exercises.stream()
              .filter(exercise -> exercise.primary().contains(target.muscle()))
              .count();
      return Math.toIntExact(sets) * facts.clock().rounds();
    }

    private int halfSets(Target target) {
      long indirect =
          exercises.stream()
              .filter(exercise -> exercise.secondary().contains(target.muscle()))
              .count();
      return 2 * direct(target) + Math.toIntExact(indirect) * facts.clock().rounds();
    }
  }

  private record Volume(Target target, int missing, int away) {}
}

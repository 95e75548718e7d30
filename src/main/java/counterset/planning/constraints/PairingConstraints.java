package counterset.planning.constraints;

import static counterset.planning.constraints.SessionConstraint.*;

import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintCollectors;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import ai.timefold.solver.core.api.score.stream.bi.BiConstraintStream;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Opposites;
import counterset.model.Pairing;
import counterset.model.SupersetKind;
import counterset.planning.Candidate;
import counterset.planning.OneSidedShare;
import counterset.planning.PairPoints;
import counterset.planning.Place;
import counterset.planning.SessionFacts;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What exercises are to those beside them. */
final class PairingConstraints {

  private static final int STRAIN = 2;

  private PairingConstraints() {}

  /**
   * The full supersets of a session that have more than one position, with their exercises in
   * order.
   */
  private static BiConstraintStream<SessionFacts, List<Place>> fullSupersets(
      ConstraintFactory factory) {
    return factory
        .forEach(Place.class)
        .groupBy(Place::getSuperset, ConstraintCollectors.toList())
        .join(SessionFacts.class)
        .filter(
            (superset, places, facts) ->
                facts.perSuperset() > 1 && places.size() == facts.perSuperset())
        .map(
            (superset, places, facts) -> facts,
            (superset, places, facts) ->
                places.stream().sorted(Comparator.comparingInt(Place::getIndex)).toList());
  }

  private static SupersetKind kind(SessionFacts facts, List<Place> places) {
    List<Exercise> exercises =
        places.stream().map(place -> place.getCandidate().exercise()).toList();
    return new Opposites(facts.catalogue()).kind(exercises);
  }

  private static int points(SessionFacts facts, List<Place> places) {
    return PairPoints.of(facts.problem().pairing(), kind(facts, places));
  }

  /** Supersets pair what the coach asked to pair. */
  static Constraint opposingPair(ConstraintFactory factory) {
    return OPPOSING_PAIR.reward(
        fullSupersets(factory).filter((facts, places) -> points(facts, places) > 0),
        PairingConstraints::points);
  }

  /** A quarter to a half of the supersets are one-sided; a unit is a superset outside that. */
  static Constraint oneSidedShare(ConstraintFactory factory) {
    return ONE_SIDED_SHARE.penalize(
        factory
            .forEach(SessionFacts.class)
            .filter(facts -> facts.perSuperset() == 2)
            .join(factory.forEachIncludingUnassigned(Place.class))
            .groupBy((facts, place) -> facts, ConstraintCollectors.toList((facts, place) -> place))
            .filter((facts, places) -> awayFromShare(facts, places) > 0),
        PairingConstraints::awayFromShare);
  }

  private static int awayFromShare(SessionFacts facts, List<Place> places) {
    Map<Integer, List<Candidate>> supersets =
        places.stream()
            .filter(place -> place.getCandidate() != null)
            .collect(
                Collectors.groupingBy(
                    Place::getSuperset,
                    Collectors.mapping(Place::getCandidate, Collectors.toList())));
    long oneSided =
        supersets.values().stream()
            .filter(candidates -> candidates.size() == 2 && candidates.get(0).unilateral())
            .filter(candidates -> candidates.get(0) == candidates.get(1))
            .count();
    return OneSidedShare.distance(Math.toIntExact(oneSided), facts.supersets());
  }

  /** Neighbours train different muscles first; a unit is a point. */
  static Constraint sameMuscleInARow(ConstraintFactory factory) {
    return SAME_MUSCLE_IN_A_ROW.penalize(
        Sequence.neighbours(factory)
            .filter(
                (before, after) ->
                    !Collections.disjoint(primary(before).toList(), primary(after).toList()))
            .ifExists(
                SessionFacts.class,
                Joiners.filtering(
                    (before, after, facts) -> facts.problem().pairing() != Pairing.COMPOUND)),
        (before, after) -> PairPoints.sameMuscle(before.getSuperset() == after.getSuperset()));
  }

  private static Stream<String> primary(Place place) {
    return place.getCandidate().exercise().primary().stream();
  }

  /** Neighbours do not strain the same joint; a unit is a joint of which both ask 2 or more. */
  static Constraint jointAgain(ConstraintFactory factory) {
    return JOINT_AGAIN.penalize(
        Sequence.neighbours(factory).filter((before, after) -> strainedTwice(before, after) > 0),
        PairingConstraints::strainedTwice);
  }

  private static int strainedTwice(Place before, Place after) {
    return Math.toIntExact(
        Stream.of(Joint.values())
            .filter(joint -> strains(before, joint) && strains(after, joint))
            .count());
  }

  private static boolean strains(Place place, Joint joint) {
    return place.getCandidate().exercise().demandOn(joint) >= STRAIN;
  }
}

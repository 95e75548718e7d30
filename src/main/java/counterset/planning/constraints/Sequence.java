package counterset.planning.constraints;

import ai.timefold.solver.core.api.score.stream.ConstraintCollectors;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import ai.timefold.solver.core.api.score.stream.bi.BiConstraintStream;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;
import counterset.model.Exercise;
import counterset.model.Intervals;
import counterset.planning.Candidate;
import counterset.planning.Place;
import counterset.planning.SessionFacts;
import counterset.timeline.Kit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The filled places of a session in order, for constraints about what comes after what.
 *
 * @param places with a candidate, in order
 */
record Sequence(SessionFacts facts, List<Place> places) {

  /** The one sequence of a solution; none while nothing is filled. */
  static UniConstraintStream<Sequence> of(ConstraintFactory factory) {
    return factory
        .forEach(SessionFacts.class)
        .join(Place.class)
        .groupBy((facts, place) -> facts, ConstraintCollectors.toList((facts, place) -> place))
        .map(
            (facts, places) ->
                new Sequence(
                    facts,
                    places.stream().sorted(Comparator.comparingInt(Place::getIndex)).toList()));
  }

  /** The one sequence of a solution, an empty one too. */
  static UniConstraintStream<Sequence> ofAny(ConstraintFactory factory) {
    return of(factory)
        .concat(
            factory
                .forEach(SessionFacts.class)
                .ifNotExists(Place.class, Joiners.filtering((facts, place) -> true))
                .map(facts -> new Sequence(facts, List.of())));
  }

  /** Every two places that follow each other directly, but the two sides of one exercise. */
  static BiConstraintStream<Place, Place> neighbours(ConstraintFactory factory) {
    return of(factory)
        .flattenLast(Sequence::links)
        .filter(link -> !link.isSecondSide())
        .map(Link::before, Link::after);
  }

  private List<Link> links() {
    List<Link> links = new ArrayList<>();
    for (int i = 1; i < places.size(); i++) {
      links.add(new Link(places.get(i - 1), places.get(i)));
    }
    return links;
  }

  /** Everything that is handled between one work interval and the next, round by round. */
  List<Handover> handovers() {
    Intervals clock = facts.clock();
    List<Handover> handovers = new ArrayList<>();
    long inUse = 0;
    Place last = null;
    int lastRound = 0;
    boolean wasOnTheFloor = false;
    int trips = 0;
    for (Step step : steps(clock.rounds())) {
      Candidate next = step.place().getCandidate();
      if (last != null) {
        boolean inside =
            last.getSuperset() == step.place().getSuperset() && lastRound == step.round();
        int room = inside ? Kit.roomInside(clock) : Kit.roomInRest(clock);
        int items =
            Long.bitCount(Kit.takenOff(inUse, next.handling()))
                + Long.bitCount(Kit.putOn(inUse, next.handling()));
        int seconds = facts.kit().seconds(inUse, last.getCandidate().handling(), next.handling());
        trips += wasOnTheFloor == next.floor() ? 0 : 1;
        boolean tripAgain = wasOnTheFloor != next.floor() && trips > 1;
        handovers.add(
            new Handover(handovers.size(), last, step.place(), items, seconds, room, tripAgain));
      }
      inUse = Kit.inUseAfter(inUse, next.handling());
      last = step.place();
      lastRound = step.round();
      wasOnTheFloor = next.floor();
    }
    return handovers;
  }

  private List<Step> steps(int rounds) {
    List<Step> steps = new ArrayList<>();
    for (int superset = 0; superset < facts.supersets(); superset++) {
      int number = superset;
      for (int round = 1; round <= rounds; round++) {
        for (Place place : places.stream().filter(p -> p.getSuperset() == number).toList()) {
          steps.add(new Step(place, round));
        }
      }
    }
    return steps;
  }

  private record Step(Place place, int round) {}

  private record Link(Place before, Place after) {

    boolean isSecondSide() {
      Exercise exercise = after.getCandidate().exercise();
      return exercise.isUnilateral()
          && before.getSuperset() == after.getSuperset()
          && before.getCandidate().exercise().id().equals(exercise.id());
    }
  }

  /**
   * What is handled between two work intervals.
   *
   * @param number distinguishes handovers that are otherwise equal
   * @param items taken up or put away
   * @param tripAgain whether one goes down to the floor or gets up, not for the first time
   */
  record Handover(
      int number, Place before, Place after, int items, int seconds, int room, boolean tripAgain) {}
}

package counterset.planning.constraints;

import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintCollectors;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;
import counterset.planning.WeekDay;
import counterset.planning.WeekFacts;
import counterset.planning.WeekPlace;
import counterset.planning.WeekRules;
import counterset.planning.WeekTarget;
import java.util.List;

/**
 * How much the week asks of each muscle group. A direct set is one round of an exercise that trains
 * it first, both sides of a unilateral one together.
 */
final class LoadConstraints {

  private LoadConstraints() {}

  /**
   * No two sessions of 3 or more direct sets of one muscle group less than 48 h apart; a unit is a
   * muscle group and pair of sessions.
   */
  static Constraint recoveryShort(ConstraintFactory factory) {
    UniConstraintStream<TooSoon> within =
        heavy(factory)
            .join(
                heavy(factory),
                Joiners.equal(Heavy::muscle),
                Joiners.lessThan(Heavy::session),
                Joiners.filtering((a, b) -> WeekRules.isRecoveryShort(Math.abs(a.day() - b.day()))))
            .map((one, other) -> new TooSoon(one.session(), other.session(), one.muscle()));
    UniConstraintStream<TooSoon> acrossTheEdge =
        heavy(factory)
            .join(factory.forEach(WeekFacts.class).flattenLast(WeekFacts::earlier))
            .filter(
                (heavy, earlier) ->
                    WeekRules.isRecoveryShort(heavy.day() - earlier.day())
                        && earlier.directSets().getOrDefault(heavy.muscle(), 0)
                            >= WeekRules.RECOVERY_SETS)
            .map(
                (heavy, earlier) ->
                    new TooSoon(heavy.session(), -1 - earlier.index(), heavy.muscle()));
    return WeekConstraint.RECOVERY_SHORT.penalize(within.concat(acrossTheEdge), pair -> 1);
  }

  private static UniConstraintStream<Heavy> heavy(ConstraintFactory factory) {
    return WeekOccurrences.of(factory)
        .expand(place -> place.getCandidate().exercise().primary())
        .flattenLast(muscles -> muscles)
        .groupBy(
            (place, muscle) -> place.getDay(),
            (place, muscle) -> muscle,
            ConstraintCollectors.sum((place, muscle) -> place.getDay().facts().clock().rounds()))
        .filter((day, muscle, sets) -> sets >= WeekRules.RECOVERY_SETS)
        .map((day, muscle, sets) -> new Heavy(day.index(), day.day(), muscle));
  }

  /** Each target has its range of weekly sets, indirect ones counted half; a unit is a half set. */
  static Constraint weeklyVolume(ConstraintFactory factory) {
    return WeekConstraint.WEEKLY_VOLUME.penalize(
        work(factory).flattenLast(Work::volumes).filter(volume -> volume.outside() > 0),
        Volume::outside);
  }

  /**
   * A target of several sessions is trained directly on at least two days; a unit is a missing day.
   */
  static Constraint weekFrequency(ConstraintFactory factory) {
    return WeekConstraint.WEEK_FREQUENCY.penalize(
        work(factory)
            .flattenLast(Work::volumes)
            .filter(volume -> volume.target().onSeveralDays() && volume.days() < WeekRules.DAYS),
        volume -> WeekRules.DAYS - volume.days());
  }

  /** What the sessions of a week do, nothing too, with its facts. */
  private static UniConstraintStream<Work> work(ConstraintFactory factory) {
    return factory
        .forEach(WeekFacts.class)
        .join(WeekOccurrences.of(factory))
        .groupBy((facts, place) -> facts, ConstraintCollectors.toList((facts, place) -> place))
        .map(Work::new)
        .concat(
            factory
                .forEach(WeekFacts.class)
                .ifNotExists(WeekPlace.class, Joiners.filtering((facts, place) -> true))
                .map(facts -> new Work(facts, List.of())));
  }

  private record Work(WeekFacts facts, List<WeekPlace> places) {

    List<Volume> volumes() {
      return facts.targets().stream().map(this::volume).toList();
    }

    private Volume volume(WeekTarget target) {
      int halfSets =
          places.stream()
              .mapToInt(
                  place -> place.getDay().facts().clock().rounds() * halves(place, target.muscle()))
              .sum();
      List<WeekDay> days =
          places.stream()
              .filter(place -> halves(place, target.muscle()) == 2)
              .map(WeekPlace::getDay)
              .distinct()
              .toList();
      return new Volume(target, WeekRules.halfSetsOutside(target.range(), halfSets), days.size());
    }

    private static int halves(WeekPlace place, String muscle) {
      if (place.getCandidate().exercise().primary().contains(muscle)) {
        return 2;
      }
      return place.getCandidate().exercise().secondary().contains(muscle) ? 1 : 0;
    }
  }

  private record Volume(WeekTarget target, int outside, int days) {}

  private record Heavy(int session, int day, String muscle) {}

  private record TooSoon(int session, int other, String muscle) {}
}

package counterset.planning.constraints;

import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;
import counterset.planning.EarlierDay;
import counterset.planning.WeekFacts;
import counterset.planning.WeekPlace;
import counterset.planning.WeekRules;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntUnaryOperator;

/** Variety from day to day. */
final class VarietyConstraints {

  private VarietyConstraints() {}

  /**
   * Exercises, a variant counting as the same, do not come again within two weeks, nor families on
   * neighbouring days; a unit is a point.
   */
  static Constraint weekRepeated(ConstraintFactory factory) {
    return WeekConstraint.WEEK_REPEATED.penalize(
        repeats(
                factory,
                place -> place.getCandidate().exercise().root(),
                EarlierDay::roots,
                WeekRules::exercisePoints)
            .concat(
                repeats(
                    factory,
                    place -> place.getCandidate().exercise().family(),
                    EarlierDay::families,
                    WeekRules::familyPoints)),
        Repeat::points);
  }

  private static UniConstraintStream<Repeat> repeats(
      ConstraintFactory factory,
      Function<WeekPlace, String> subject,
      Function<EarlierDay, Set<String>> before,
      IntUnaryOperator pointsByDaysApart) {
    UniConstraintStream<Repeat> within =
        used(factory, subject)
            .join(
                used(factory, subject),
                Joiners.equal(Used::subject),
                Joiners.lessThan(Used::session))
            .map(
                (one, other) ->
                    new Repeat(
                        one.session(),
                        other.session(),
                        one.subject(),
                        pointsByDaysApart.applyAsInt(Math.abs(one.day() - other.day()))));
    UniConstraintStream<Repeat> acrossTheEdge =
        used(factory, subject)
            .join(factory.forEach(WeekFacts.class).flattenLast(WeekFacts::earlier))
            .filter((used, earlier) -> before.apply(earlier).contains(used.subject()))
            .map(
                (used, earlier) ->
                    new Repeat(
                        used.session(),
                        -1 - earlier.index(),
                        used.subject(),
                        pointsByDaysApart.applyAsInt(used.day() - earlier.day())));
    return within.concat(acrossTheEdge).filter(repeat -> repeat.points() > 0);
  }

  private static UniConstraintStream<Used> used(
      ConstraintFactory factory, Function<WeekPlace, String> subject) {
    return factory
        .forEach(WeekPlace.class)
        .map(place -> new Used(place.getDay().index(), place.getDay().day(), subject.apply(place)))
        .distinct();
  }

  private record Used(int session, int day, String subject) {}

  private record Repeat(int session, int other, String subject, int points) {}
}

package counterset.planning.constraints;

import static counterset.planning.constraints.SessionConstraint.*;

import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintCollectors;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import counterset.model.Equipment;
import counterset.model.Exercise;
import counterset.model.Need;
import counterset.model.Owned;
import counterset.model.Problem;
import counterset.planning.Place;
import counterset.planning.SessionFacts;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The order of work, how hard it is, and how it suits the client. */
final class TasteConstraints {

  private static final int MODERATE = 2;

  private TasteConstraints() {}

  /** Heavy work comes before light work; a unit is a step of intensity. */
  static Constraint lightBeforeHeavy(ConstraintFactory factory) {
    return LIGHT_BEFORE_HEAVY.penalize(
        Occurrences.pairs(factory).filter((earlier, later) -> steps(earlier, later) > 0),
        TasteConstraints::steps);
  }

  private static int steps(Place earlier, Place later) {
    return later.getCandidate().exercise().intensity()
        - earlier.getCandidate().exercise().intensity();
  }

  /** Exercises feel different from each other. */
  static Constraint familyAgain(ConstraintFactory factory) {
    return FAMILY_AGAIN.penalize(
        Occurrences.pairs(factory)
            .filter(
                (a, b) ->
                    a.getCandidate()
                        .exercise()
                        .family()
                        .equals(b.getCandidate().exercise().family())),
        (a, b) -> 1);
  }

  /**
   * The client's equipment is lifted; a unit is a position without it. What carries the client is
   * no load, unless there is nothing else; a mere comfort never is.
   */
  static Constraint unloaded(ConstraintFactory factory) {
    return UNLOADED.penalize(
        factory
            .forEach(Place.class)
            .join(SessionFacts.class)
            .filter(
                (place, facts) -> {
                  Set<String> loads = loads(facts);
                  return !loads.isEmpty() && Collections.disjoint(loads, needs(place));
                }),
        (place, facts) -> 1);
  }

  private static Set<String> loads(SessionFacts facts) {
    Set<String> loads = new TreeSet<>();
    Set<String> supports = new TreeSet<>();
    for (Owned owned : facts.problem().equipment()) {
      Equipment equipment = facts.catalogue().equipment().get(owned.id());
      if (!equipment.support()) {
        loads.add(owned.id());
      } else if (equipment.comfortIn().isEmpty()) {
        supports.add(owned.id());
      }
    }
    return loads.isEmpty() ? supports : loads;
  }

  private static List<String> needs(Place place) {
    return exercise(place).needs().stream().map(Need::equipment).toList();
  }

  /** The work matches the client's level; a unit is a step below it. */
  static Constraint tooEasy(ConstraintFactory factory) {
    return TOO_EASY.penalize(
        Occurrences.of(factory)
            .join(SessionFacts.class)
            .filter(
                (place, facts) ->
                    place.getCandidate().exercise().level() < facts.problem().level()),
        (place, facts) -> facts.problem().level() - place.getCandidate().exercise().level());
  }

  /** The work averages at least moderate intensity; a unit is a step short of 2 a position. */
  static Constraint tooLight(ConstraintFactory factory) {
    return TOO_LIGHT.penalize(
        factory
            .forEach(Place.class)
            .groupBy(
                ConstraintCollectors.sum(
                    place -> MODERATE - place.getCandidate().exercise().intensity()))
            .filter(lightness -> lightness > 0),
        lightness -> lightness);
  }

  /** What was done lately rests; a unit is a point. */
  static Constraint usedRecently(ConstraintFactory factory) {
    return USED_RECENTLY.penalize(
        Occurrences.of(factory).filter(place -> place.getCandidate().recentPoints() > 0),
        place -> place.getCandidate().recentPoints());
  }

  /** What the client likes is welcome. */
  static Constraint likes(ConstraintFactory factory) {
    return LIKES.reward(
        Occurrences.of(factory)
            .join(SessionFacts.class)
            .filter((place, facts) -> Problem.names(facts.problem().likes(), exercise(place))),
        (place, facts) -> 1);
  }

  /** What the client dislikes is not. */
  static Constraint dislikes(ConstraintFactory factory) {
    return DISLIKES.penalize(
        Occurrences.of(factory)
            .join(SessionFacts.class)
            .filter((place, facts) -> Problem.names(facts.problem().dislikes(), exercise(place))),
        (place, facts) -> 1);
  }

  private static Exercise exercise(Place place) {
    return place.getCandidate().exercise();
  }
}

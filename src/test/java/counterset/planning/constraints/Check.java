package counterset.planning.constraints;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.test.api.score.stream.ConstraintVerifier;
import ai.timefold.solver.test.api.score.stream.ShadowVariableAwareSingleConstraintAssertion;
import counterset.fixture.SessionBuilder;
import counterset.planning.Place;
import counterset.planning.SessionSolution;
import counterset.planning.StandIn;
import counterset.planning.scoring.Ledger;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;

/**
 * Holds one constraint to an amount, in units of its weight, for a session: the constraint stream,
 * and the straight pass that drives the search with it.
 */
final class Check {

  /** The classes that define the constraints, one a topic. */
  static final List<Class<?>> TOPICS =
      List.of(
          SafetyConstraints.class,
          HandlingConstraints.class,
          PairingConstraints.class,
          CoverageConstraints.class,
          TasteConstraints.class,
          TrackConstraints.class);

  private static final ConstraintVerifier<SessionConstraintProvider, SessionSolution> VERIFIER =
      ConstraintVerifier.build(
          new SessionConstraintProvider(), SessionSolution.class, Place.class, StandIn.class);

  private Check() {}

  static void costs(SessionConstraint constraint, int amount, SessionBuilder session) {
    given(constraint, session).penalizesBy(amount);
    assertThat(straight(constraint, session)).as("straight pass").isEqualTo(amount);
  }

  static void earns(SessionConstraint constraint, int amount, SessionBuilder session) {
    given(constraint, session).rewardsWith(amount);
    assertThat(straight(constraint, session)).as("straight pass").isEqualTo(amount);
  }

  static void silent(SessionConstraint constraint, SessionBuilder session) {
    given(constraint, session).hasNoImpact();
    assertThat(straight(constraint, session)).as("straight pass").isZero();
  }

  private static ShadowVariableAwareSingleConstraintAssertion given(
      SessionConstraint constraint, SessionBuilder session) {
    return VERIFIER
        .verifyThat((provider, factory) -> define(constraint, factory))
        .givenSolution(session.solution());
  }

  private static int straight(SessionConstraint constraint, SessionBuilder session) {
    return Ledger.of(session.solution()).stream()
        .filter(entry -> entry.constraint() == constraint)
        .mapToInt(Ledger.Entry::amount)
        .sum();
  }

  /** A constraint is defined by the method that has its id for a name. */
  private static Constraint define(SessionConstraint constraint, ConstraintFactory factory) {
    Method method =
        TOPICS.stream()
            .flatMap(topic -> Arrays.stream(topic.getDeclaredMethods()))
            .filter(candidate -> candidate.getName().equals(constraint.id()))
            .filter(candidate -> candidate.getReturnType() == Constraint.class)
            .findFirst()
            .orElseThrow();
    try {
      return (Constraint) method.invoke(null, factory);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new AssertionError("The constraint (" + constraint.id() + ") could not be defined.", e);
    }
  }
}

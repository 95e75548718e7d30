package counterset.planning.constraints;

import static org.assertj.core.api.Assertions.assertThat;

import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.test.api.score.stream.ConstraintVerifier;
import counterset.fixture.WeekBuilder;
import counterset.planning.WeekPlace;
import counterset.planning.WeekSolution;
import counterset.planning.WeekStandIn;
import counterset.planning.scoring.WeekLedger;

/**
 * Holds one constraint to an amount, in units of its weight, for a week: the constraint stream, and
 * the ledger with it.
 */
final class WeekCheck {

  private static final ConstraintVerifier<WeekConstraintProvider, WeekSolution> VERIFIER =
      ConstraintVerifier.build(
          new WeekConstraintProvider(), WeekSolution.class, WeekPlace.class, WeekStandIn.class);

  private WeekCheck() {}

  static void costs(WeekConstraint constraint, int amount, WeekBuilder week) {
    VERIFIER
        .verifyThat((provider, factory) -> define(constraint, factory))
        .givenSolution(week.solution())
        .penalizesBy(amount);
    int ledger =
        WeekLedger.of(week.solution()).stream()
            .filter(entry -> entry.constraint() == constraint)
            .mapToInt(WeekLedger.Entry::amount)
            .sum();
    assertThat(ledger).as("ledger").isEqualTo(amount);
  }

  static void silent(WeekConstraint constraint, WeekBuilder week) {
    costs(constraint, 0, week);
  }

  private static Constraint define(WeekConstraint constraint, ConstraintFactory factory) {
    return switch (constraint) {
      case WEEK_FREQUENCY -> LoadConstraints.weekFrequency(factory);
      case RECOVERY_SHORT -> LoadConstraints.recoveryShort(factory);
      case WEEKLY_VOLUME -> LoadConstraints.weeklyVolume(factory);
      case WEEK_REPEATED -> VarietyConstraints.weekRepeated(factory);
    };
  }
}

package counterset.planning.constraints;

import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.ConstraintProvider;

/**
 * The constraints between the sessions of a week, in the order of their catalogue. Those of each
 * session by itself are {@link SessionConstraintProvider}'s.
 */
public final class WeekConstraintProvider implements ConstraintProvider {

  @Override
  public Constraint[] defineConstraints(ConstraintFactory factory) {
    return new Constraint[] {
      LoadConstraints.weekFrequency(factory),
      LoadConstraints.recoveryShort(factory),
      LoadConstraints.weeklyVolume(factory),
      VarietyConstraints.weekRepeated(factory),
    };
  }
}

package counterset.training;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which load to take next in one exercise.
 *
 * @param exercise its id
 * @param last what was lifted the last time
 * @param oneRepMax the estimate from its last set, where the formulas hold
 * @param kg the mass of one piece to take; empty if there is no advice
 * @param say the advice or the reason for none, as a coach would say it, without a full stop
 */
public record LoadAdvice(
    String exercise,
    Optional<Lifted> last,
    Optional<OneRepMax> oneRepMax,
    Step step,
    OptionalDouble kg,
    String say) {}

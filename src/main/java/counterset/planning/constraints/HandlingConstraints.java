package counterset.planning.constraints;

import static counterset.planning.constraints.SessionConstraint.*;

import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;
import counterset.planning.constraints.Sequence.Handover;
import counterset.planning.constraints.TrackHandovers.TooLong;

/** Equipment and the way to the floor: what happens between two work intervals. */
final class HandlingConstraints {

  private HandlingConstraints() {}

  private static UniConstraintStream<Handover> handovers(ConstraintFactory factory) {
    return Sequence.of(factory).flattenLast(Sequence::handovers);
  }

  /** Every changeover fits in its pause, on each track too; a unit is a second too long. */
  static Constraint changeoverTooLong(ConstraintFactory factory) {
    return CHANGEOVER_TOO_LONG.penalize(
        handovers(factory)
            .filter(handover -> handover.seconds() > handover.room())
            .map(
                handover ->
                    new TooLong(-1, handover.number(), handover.seconds() - handover.room()))
            .concat(TrackLine.of(factory).flattenLast(TrackHandovers::tooLong)),
        TooLong::seconds);
  }

  /** Little is taken up or put away; a unit is an item. */
  static Constraint equipmentChange(ConstraintFactory factory) {
    return EQUIPMENT_CHANGE.penalize(
        handovers(factory).filter(handover -> handover.items() > 0), Handover::items);
  }

  /** Changeovers are short; a unit is a second. */
  static Constraint changeoverSeconds(ConstraintFactory factory) {
    return CHANGEOVER_SECONDS.penalize(
        handovers(factory).filter(handover -> handover.seconds() > 0), Handover::seconds);
  }

  /** One goes down to the floor, or gets up from it, once. */
  static Constraint floorTrip(ConstraintFactory factory) {
    return FLOOR_TRIP.penalize(handovers(factory).filter(Handover::tripAgain), handover -> 1);
  }
}

package counterset.planning.constraints;

import static counterset.planning.constraints.SessionConstraint.*;

import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import counterset.planning.constraints.TrackLine.Turn;

/** What the followers of the tracks of a class do instead of what does not suit them. */
final class TrackConstraints {

  private TrackConstraints() {}

  /** Every track has a modification beside each exercise that does not suit it. */
  static Constraint modificationMissing(ConstraintFactory factory) {
    return MODIFICATION_MISSING.penalize(
        TrackLine.of(factory).flattenLast(TrackLine::missing), turn -> 1);
  }

  /** No modification brings an exercise, nor a variant of it, twice to a track. */
  static Constraint trackRepeated(ConstraintFactory factory) {
    return TRACK_REPEATED.penalize(
        TrackLine.of(factory).flattenLast(TrackLine::repeats), repeat -> 1);
  }

  /** A modification fits the moment; a unit is a point. */
  static Constraint modificationAwkward(ConstraintFactory factory) {
    return MODIFICATION_AWKWARD.penalize(
        TrackLine.of(factory)
            .flattenLast(TrackLine::modifications)
            .filter(turn -> turn.awkwardness() > 0),
        Turn::awkwardness);
  }
}

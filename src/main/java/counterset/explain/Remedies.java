package counterset.explain;

import counterset.planning.constraints.SessionConstraint;

/** What would mend a broken rule or an unmet wish. */
final class Remedies {

  private Remedies() {}

  /** A sentence; empty text for constraints that are a matter of points. */
  static String of(SessionConstraint constraint) {
    return switch (constraint) {
      case EXERCISE_REPEATED -> "Maybe swap one of them.";
      case SIDES_SPLIT -> "Maybe give it both positions of one superset of two.";
      case EQUIPMENT_MISSING -> "Maybe swap it, or list the equipment.";
      case UNSAFE_FOR_CLIENT -> "Swap it.";
      case CHANGEOVER_TOO_LONG ->
          "Maybe swap one of them, change their order, or lengthen the pause.";
      case CLOCK_OVERRUN -> "Maybe drop a superset, shorten the intervals, or raise the minutes.";
      case KEPT_MOVED -> "Maybe put it back, or keep it no longer.";
      case ABOVE_LEVEL -> "Maybe swap it, or raise the level.";
      case EXCLUDED -> "Maybe swap it, or exclude it no longer.";
      case TARGET_UNCOVERED -> "Maybe more minutes, fewer targets, or more equipment.";
      case SUPERSET_EMPTY -> "Maybe more equipment, fewer limitations, or fewer exclusions.";
      case EQUIPMENT_UNUSED -> "Maybe leave it out, or add a target that it trains.";
      case INCLUDE_MISSING -> "Maybe keep it at a place, or drop another wish.";
      case MODIFICATION_MISSING -> "Show another exercise beside it, or swap it.";
      case TRACK_REPEATED -> "Maybe show another exercise beside it.";
      default -> "";
    };
  }
}

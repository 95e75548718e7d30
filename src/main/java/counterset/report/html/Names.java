package counterset.report.html;

import counterset.model.Catalogue;
import counterset.model.Interval;
import counterset.model.IntervalKind;
import counterset.model.Muscle;
import counterset.model.Side;
import java.util.Optional;

/** Short names that several parts of a page show. */
final class Names {

  private Names() {}

  static String muscle(String id, Catalogue catalogue) {
    return Optional.ofNullable(catalogue.muscles().get(id)).map(Muscle::name).orElse(id);
  }

  static String kind(IntervalKind kind) {
    return switch (kind) {
      case GET_READY -> "Get ready";
      case WARM_UP -> "Warm-up";
      case WORK -> "Work";
      case SWITCH -> "Switch";
      case REST -> "Rest";
      case COOL_DOWN -> "Cool-down";
    };
  }

  /** The side of an interval; empty text where there is nothing to say. */
  static String side(Interval interval) {
    return side(interval.side());
  }

  static String side(Optional<Side> side) {
    return switch (side.orElse(Side.BOTH)) {
      case BOTH -> "";
      case LEFT -> "left side";
      case RIGHT -> "right side";
      case ALTERNATING -> "sides in turn";
    };
  }
}

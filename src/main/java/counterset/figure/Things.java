package counterset.figure;

import counterset.model.Figure.Prop;
import counterset.model.Figure.Where;

/** The sizes of things in metres: usual ones for a home (common practice, no source). */
final class Things {

  static final double BAR_HEIGHT = 2.15;
  static final double CHAIR_SEAT = 0.45;
  static final double CHAIR_BACK = 0.85;
  static final double CHAIR_DEPTH = 0.42;
  static final double STEP_HEIGHT = 0.15;
  static final double STEP_LENGTH = 0.4;
  static final double BENCH_HEIGHT = 0.42;
  static final double BENCH_LENGTH = 1.2;
  static final double BALL = 0.55;
  static final double SLIDER = 0.015;
  static final double DUMBBELL = 0.09;

  private Things() {}

  /** How high a thing carries the body. */
  static double height(Prop prop) {
    if (prop.height() > 0) {
      return prop.height();
    }
    return switch (prop.thing()) {
      case CHAIR -> CHAIR_SEAT;
      case STEP -> STEP_HEIGHT;
      case BENCH -> BENCH_HEIGHT;
      case BALL -> BALL;
      case SLIDER -> SLIDER;
      case DUMBBELL -> DUMBBELL;
      case BAR -> BAR_HEIGHT;
      case WALL -> 0;
    };
  }

  /** The direction from the figure to something. */
  static Vec away(Where where) {
    return switch (where) {
      case AHEAD -> new Vec(1, 0, 0);
      case BEHIND -> new Vec(-1, 0, 0);
      case RIGHT -> new Vec(0, 0, 1);
      case LEFT -> new Vec(0, 0, -1);
    };
  }
}

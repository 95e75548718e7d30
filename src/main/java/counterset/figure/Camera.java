package counterset.figure;

import counterset.model.Figure.View;

/**
 * Projects points to the picture without perspective: x to the right and y down, in hundredths of a
 * metre.
 */
record Camera(View view) {

  private static final double SCALE = 100;

  /** From a little ahead of the side, so that the far limbs can be seen beside the near ones. */
  private static final Turn ASIDE = Turn.aboutY(10);

  /** Where a point is seen. */
  Dot dot(Vec at) {
    Vec seen = seen(at);
    return new Dot(seen.x() * SCALE, -seen.y() * SCALE);
  }

  /** How near it is to the eye; more is nearer. */
  double nearness(Vec at) {
    return seen(at).z();
  }

  private Vec seen(Vec at) {
    return switch (view) {
      case SIDE -> ASIDE.of(at);
      case FRONT -> new Vec(-at.z(), at.y(), at.x());
      case BACK -> new Vec(at.z(), at.y(), -at.x());
      case ABOVE -> new Vec(at.x(), -at.z(), at.y());
    };
  }
}

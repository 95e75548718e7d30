package counterset.figure;

/**
 * A flat face that points of the body touch.
 *
 * @param normal away from the face, of length 1
 * @param offset of the face along the normal, in metres
 */
record Surface(Vec normal, double offset) {

  static final Surface FLOOR = level(0);

  /** A level face at a height. */
  static Surface level(double height) {
    return new Surface(new Vec(0, 1, 0), height);
  }

  /** How far the outline of the body is from the face; negative inside it. */
  double gap(Spot spot, Vec at) {
    return dot(at, normal) - offset - spot.radius();
  }

  private static double dot(Vec a, Vec b) {
    return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
  }
}

package counterset.figure;

/** A rotation, as the columns of its matrix: where the axes x, y and z go. */
record Turn(Vec x, Vec y, Vec z) {

  static final Turn NONE = new Turn(new Vec(1, 0, 0), new Vec(0, 1, 0), new Vec(0, 0, 1));

  /** About the axis to the front; turns up to the right. */
  static Turn aboutX(double degrees) {
    double c = cos(degrees);
    double s = sin(degrees);
    return new Turn(new Vec(1, 0, 0), new Vec(0, c, s), new Vec(0, -s, c));
  }

  /** About the upright axis; turns right to the front. */
  static Turn aboutY(double degrees) {
    double c = cos(degrees);
    double s = sin(degrees);
    return new Turn(new Vec(c, 0, -s), new Vec(0, 1, 0), new Vec(s, 0, c));
  }

  /** About the axis to the right; turns the front up. */
  static Turn aboutZ(double degrees) {
    double c = cos(degrees);
    double s = sin(degrees);
    return new Turn(new Vec(c, s, 0), new Vec(-s, c, 0), new Vec(0, 0, 1));
  }

  /** First the other one, then this. */
  Turn after(Turn other) {
    return new Turn(of(other.x), of(other.y), of(other.z));
  }

  /** Where a direction goes. */
  Vec of(Vec v) {
    return x.times(v.x()).plus(y.times(v.y())).plus(z.times(v.z()));
  }

  private static double cos(double degrees) {
    return StrictMath.cos(StrictMath.toRadians(degrees));
  }

  private static double sin(double degrees) {
    return StrictMath.sin(StrictMath.toRadians(degrees));
  }
}

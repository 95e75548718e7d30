package counterset.figure;

/** A point or a direction: x to the front, y up, z to the right, in metres. */
record Vec(double x, double y, double z) {

  static final Vec ZERO = new Vec(0, 0, 0);

  Vec plus(Vec other) {
    return new Vec(x + other.x, y + other.y, z + other.z);
  }

  Vec minus(Vec other) {
    return new Vec(x - other.x, y - other.y, z - other.z);
  }

  Vec times(double factor) {
    return new Vec(x * factor, y * factor, z * factor);
  }

  /** A part of the way to another point: 0 is here, 1 is there. */
  Vec towards(Vec other, double part) {
    return plus(other.minus(this).times(part));
  }

  double length() {
    return StrictMath.sqrt(x * x + y * y + z * z);
  }

  /** At right angles to both: up and right make front. */
  Vec cross(Vec other) {
    return new Vec(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }
}

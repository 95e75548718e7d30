package counterset.figure;

/** A point of the picture: x to the right and y down, in hundredths of a metre. */
record Dot(double x, double y) {

  Dot plus(double dx, double dy) {
    return new Dot(x + dx, y + dy);
  }

  Dot towards(Dot other, double part) {
    return new Dot(x + part * (other.x - x), y + part * (other.y - y));
  }

  double distance(Dot other) {
    return StrictMath.sqrt((x - other.x) * (x - other.x) + (y - other.y) * (y - other.y));
  }

  /** At a right angle to the way from here to another point, so far off; up if they are one. */
  Dot across(Dot other, double far) {
    double length = distance(other);
    return length < 1e-6
        ? plus(0, -far)
        : plus(-(other.y - y) * far / length, (other.x - x) * far / length);
  }
}

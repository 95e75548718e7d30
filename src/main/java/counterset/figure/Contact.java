package counterset.figure;

import java.util.Optional;

/**
 * A point of the body that touches something.
 *
 * @param fixed where it stands; empty if it may be anywhere on the face
 */
record Contact(Spot spot, Surface surface, Optional<Vec> fixed) {

  /** How far it is from where it belongs, in metres: one number, or three along the axes. */
  double[] misses(Body body) {
    Vec at = body.at(spot);
    if (fixed.isEmpty()) {
      return new double[] {surface.gap(spot, at)};
    }
    Vec miss = at.minus(fixed.get());
    return new double[] {miss.x(), miss.y(), miss.z()};
  }
}

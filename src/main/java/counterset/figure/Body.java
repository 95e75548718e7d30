package counterset.figure;

import java.util.EnumMap;
import java.util.Map;

/**
 * Where every point of a body is, and which way it looks.
 *
 * @param nose the tip of the nose
 */
record Body(Map<Spot, Vec> spots, Vec nose) {

  Vec at(Spot spot) {
    return spots.get(spot);
  }

  /** The same body elsewhere. */
  Body moved(Vec by) {
    Map<Spot, Vec> moved = new EnumMap<>(Spot.class);
    spots.forEach((spot, place) -> moved.put(spot, place.plus(by)));
    return new Body(moved, nose.plus(by));
  }
}

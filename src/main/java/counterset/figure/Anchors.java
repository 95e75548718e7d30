package counterset.figure;

import counterset.model.Figure.Where;
import java.util.Map;
import java.util.Optional;

/**
 * Where a band can be fastened: {@code ahead-low}, {@code left-high} and so on, so far from the
 * figure and so high as a door lets one (common practice, no source).
 */
final class Anchors {

  private static final double DISTANCE = 1.0;
  private static final Map<String, Double> HEIGHTS =
      Map.of("low", 0.1, "middle", 1.05, "high", 2.0);

  private Anchors() {}

  /** The place of an anchor, from the floor below the hips; empty if there is no such anchor. */
  static Optional<Vec> place(String name) {
    for (Where where : Where.values()) {
      String start = where.id() + "-";
      if (name.startsWith(start) && HEIGHTS.containsKey(name.substring(start.length()))) {
        Vec away = Things.away(where).times(DISTANCE);
        return Optional.of(away.plus(new Vec(0, HEIGHTS.get(name.substring(start.length())), 0)));
      }
    }
    return Optional.empty();
  }
}

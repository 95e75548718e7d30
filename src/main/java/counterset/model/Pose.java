package counterset.model;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * One moment of a drawn exercise.
 *
 * @param angles in degrees; one that is not named is {@link Angle#usual}
 * @param stands the points of the body that carry it and stay where they are until they are lifted
 * @param slides the points that touch what is under them, and may move along it
 * @param lift in metres, how high above the floor a body is that touches nothing, as in a leap
 */
public record Pose(
    Map<Angle, Double> angles, List<String> stands, List<String> slides, double lift) {

  /** A pose that is not in the air. */
  public Pose(Map<Angle, Double> angles, List<String> stands, List<String> slides) {
    this(angles, stands, slides, 0);
  }

  public Pose {
    EnumMap<Angle, Double> ordered = new EnumMap<>(Angle.class);
    ordered.putAll(angles);
    angles = Ordered.map(ordered);
    stands = List.copyOf(stands);
    slides = List.copyOf(slides);
  }

  /** The degrees of an angle. */
  public double degrees(Angle angle) {
    return angles.getOrDefault(angle, angle.usual());
  }
}

package counterset.model;

import java.util.Locale;
import java.util.Optional;

/**
 * An angle of a drawn pose, in degrees; 0 is a person who stands upright with hanging arms, the
 * elbows ready to bend forward.
 *
 * <p>Signs and order follow the clinical description of joints: flexion, abduction and outward
 * rotation are positive (Grood and Suntay 1983 for the hip; Wu and others 2005 for the shoulder,
 * whose elevation lies in a plane of its own, 0 to the side and 90 to the front). The limits are
 * the usual ranges of motion of the American Academy of Orthopaedic Surgeons (1965), from memory,
 * and somewhat wider where a squat or a kneeling seat is known to go further (common practice, no
 * source).
 */
public enum Angle {
  /** The whole body tips forward; 90 lies face down, -90 on the back. */
  LEAN(-180, 180, Part.WHOLE),
  /** The whole body tips to its right; -90 lies on the left side. */
  TILT(-180, 180, Part.WHOLE),
  /** The whole body turns to its right. */
  TURN(-180, 180, Part.WHOLE),
  SPINE_BEND(-40, 85, Part.TRUNK),
  SPINE_SIDE(-40, 40, Part.TRUNK),
  SPINE_TWIST(-50, 50, Part.TRUNK),
  NECK(-60, 50, Part.TRUNK),
  RIGHT_HIP_FLEX(-35, 135, Part.RIGHT_LEG),
  RIGHT_HIP_OUT(-40, 60, Part.RIGHT_LEG),
  RIGHT_HIP_TURN(-50, 70, Part.RIGHT_LEG),
  RIGHT_KNEE(-5, 155, Part.RIGHT_LEG),
  RIGHT_ANKLE(-60, 40, Part.RIGHT_LEG),
  RIGHT_SHRUG(-20, 20, Part.RIGHT_ARM),
  RIGHT_SHOULDER_RAISE(-65, 185, Part.RIGHT_ARM),
  RIGHT_SHOULDER_PLANE(-100, 150, Part.RIGHT_ARM),
  RIGHT_SHOULDER_TURN(-110, 110, Part.RIGHT_ARM),
  RIGHT_ELBOW(-5, 155, Part.RIGHT_ARM),
  LEFT_HIP_FLEX(-35, 135, Part.LEFT_LEG),
  LEFT_HIP_OUT(-40, 60, Part.LEFT_LEG),
  LEFT_HIP_TURN(-50, 70, Part.LEFT_LEG),
  LEFT_KNEE(-5, 155, Part.LEFT_LEG),
  LEFT_ANKLE(-60, 40, Part.LEFT_LEG),
  LEFT_SHRUG(-20, 20, Part.LEFT_ARM),
  LEFT_SHOULDER_RAISE(-65, 185, Part.LEFT_ARM),
  LEFT_SHOULDER_PLANE(-100, 150, Part.LEFT_ARM),
  LEFT_SHOULDER_TURN(-110, 110, Part.LEFT_ARM),
  LEFT_ELBOW(-5, 155, Part.LEFT_ARM);

  /** What an angle moves. */
  public enum Part {
    WHOLE,
    TRUNK,
    RIGHT_LEG,
    RIGHT_ARM,
    LEFT_LEG,
    LEFT_ARM
  }

  private final double least;
  private final double most;
  private final Part part;
  private final String key;

  Angle(double least, double most, Part part) {
    this.least = least;
    this.most = most;
    this.part = part;
    this.key = camelCase(name());
  }

  /** How it is written in a catalogue, such as {@code rightHipFlex}. */
  public String key() {
    return key;
  }

  /** How it is written for both sides at once, such as {@code hipFlex}; empty if it has no side. */
  public Optional<String> bothSidesKey() {
    return part == Part.WHOLE || part == Part.TRUNK
        ? Optional.empty()
        : Optional.of(camelCase(name().substring(name().indexOf('_') + 1)));
  }

  /** The least degrees that a pose may have. */
  public double least() {
    return least;
  }

  /** The most degrees that a pose may have. */
  public double most() {
    return most;
  }

  /** What it moves. */
  public Part part() {
    return part;
  }

  /** The degrees of a pose that does not name it: an arm is raised to the front. */
  public double usual() {
    return this == RIGHT_SHOULDER_PLANE || this == LEFT_SHOULDER_PLANE ? 90 : 0;
  }

  private static String camelCase(String name) {
    StringBuilder key = new StringBuilder();
    for (String word : name.toLowerCase(Locale.ROOT).split("_")) {
      key.append(
          key.length() == 0 ? word.substring(0, 1) : word.substring(0, 1).toUpperCase(Locale.ROOT));
      key.append(word.substring(1));
    }
    return key.toString();
  }
}

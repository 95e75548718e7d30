package counterset.figure;

import counterset.model.Angle;
import java.util.Arrays;

/**
 * A body in its place.
 *
 * @param degrees by angle, in the order of {@link Angle}
 * @param hips where the middle of the hips is
 */
record Stance(double[] degrees, Vec hips) {

  private static final int ANGLES = Angle.values().length;

  /** The points of the body. */
  Body body() {
    return Skeleton.of(angle -> degrees[angle.ordinal()]).moved(hips);
  }

  /** A part of the way to another stance, angle by angle. */
  Stance towards(Stance other, double part) {
    double[] between = new double[ANGLES];
    for (int i = 0; i < ANGLES; i++) {
      between[i] = degrees[i] + part * (other.degrees[i] - degrees[i]);
    }
    return new Stance(between, hips.towards(other.hips, part));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Stance stance
        && Arrays.equals(degrees, stance.degrees)
        && hips.equals(stance.hips);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(degrees) * 31 + hips.hashCode();
  }

  @Override
  public String toString() {
    return Arrays.toString(degrees) + " at " + hips;
  }
}

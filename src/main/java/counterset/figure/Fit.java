package counterset.figure;

import counterset.model.Angle;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Moves a stance as little as possible so that all its contacts hold and nothing is below the
 * floor: nonlinear least squares over the angles of the limbs that touch something, and the place
 * of the hips.
 */
final class Fit {

  // Misses and changes that weigh the same.
  private static final double METRES = 0.001;
  private static final double METRES_BELOW = 0.003;
  private static final double LIMB_DEGREES = 15;
  private static final double TRUNK_DEGREES = 6;
  private static final double DEGREES_BEYOND = 1;
  private static final double METRES_OF_HIPS = 0.3;

  private final Stance start;
  private final List<Contact> contacts;
  private final List<Angle> free;

  private Fit(Stance start, List<Contact> contacts) {
    this.start = start;
    this.contacts = contacts;
    this.free = free(contacts);
  }

  /** The nearest stance in which the contacts hold. */
  static Stance of(Stance start, List<Contact> contacts) {
    Fit fit = new Fit(start, contacts);
    return fit.stance(LeastSquares.solve(new double[fit.free.size() + 3], fit::residuals));
  }

  private static List<Angle> free(List<Contact> contacts) {
    Set<Angle.Part> parts = EnumSet.noneOf(Angle.Part.class);
    boolean head = false;
    for (Contact contact : contacts) {
      String name = contact.spot().name();
      boolean right = name.startsWith("RIGHT");
      if (name.endsWith("ELBOW") || name.endsWith("HAND")) {
        parts.add(right ? Angle.Part.RIGHT_ARM : Angle.Part.LEFT_ARM);
      } else if (name.endsWith("KNEE")
          || name.endsWith("ANKLE")
          || name.endsWith("HEEL")
          || name.endsWith("TOE")) {
        parts.add(right ? Angle.Part.RIGHT_LEG : Angle.Part.LEFT_LEG);
      }
      head |= contact.spot() == Spot.HEAD;
    }
    List<Angle> free = new ArrayList<>();
    for (Angle angle : Angle.values()) {
      boolean isNeck = angle == Angle.NECK && head;
      boolean isShrug = angle == Angle.RIGHT_SHRUG || angle == Angle.LEFT_SHRUG;
      if (parts.contains(angle.part()) && !isShrug
          || angle == Angle.LEAN
          || angle == Angle.TILT
          || isNeck) {
        free.add(angle);
      }
    }
    return free;
  }

  private Stance stance(double[] change) {
    double[] degrees = start.degrees().clone();
    for (int i = 0; i < free.size(); i++) {
      degrees[free.get(i).ordinal()] += change[i] * scale(free.get(i));
    }
    int hips = free.size();
    Vec moved = new Vec(change[hips], change[hips + 1], change[hips + 2]).times(METRES_OF_HIPS);
    return new Stance(degrees, start.hips().plus(moved));
  }

  private static double scale(Angle angle) {
    boolean limb = angle.part() != Angle.Part.WHOLE && angle.part() != Angle.Part.TRUNK;
    return limb ? LIMB_DEGREES : TRUNK_DEGREES;
  }

  private double[] residuals(double[] change) {
    Stance stance = stance(change);
    Body body = stance.body();
    List<Double> all = new ArrayList<>();
    Set<Spot> touching = EnumSet.noneOf(Spot.class);
    for (Contact contact : contacts) {
      touching.add(contact.spot());
      for (double miss : contact.misses(body)) {
        all.add(miss / METRES);
      }
    }
    for (Spot spot : Spot.values()) {
      double gap = Surface.FLOOR.gap(spot, body.at(spot));
      all.add(touching.contains(spot) ? 0 : StrictMath.min(0, gap) / METRES_BELOW);
    }
    for (double part : change) {
      all.add(part);
    }
    for (Angle angle : free) {
      double degrees = stance.degrees()[angle.ordinal()];
      double beyond = StrictMath.max(degrees - angle.most(), angle.least() - degrees);
      all.add(StrictMath.max(0, beyond) / DEGREES_BEYOND);
    }
    return all.stream().mapToDouble(Double::doubleValue).toArray();
  }
}

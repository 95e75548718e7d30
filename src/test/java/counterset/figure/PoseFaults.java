package counterset.figure;

import counterset.model.Angle;
import counterset.model.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What is wrong with the poses of a figure: contacts that cannot hold, points below the floor,
 * joints beyond their range, and angles that are far from those the body needs to stand so.
 */
public final class PoseFaults {

  private static final double METRES = 0.012;
  private static final double METRES_BELOW = 0.02;
  private static final double DEGREES_BEYOND = 3;
  private static final double DEGREES_OFF = 25;

  /** From one pose to the next. */
  static final int STEPS = 4;

  private PoseFaults() {}

  /** One line a fault: the pose from 1, what and how much. */
  public static List<String> of(Figure figure) {
    Motion motion = new Motion(figure);
    return of(figure, motion, motion.frames(STEPS));
  }

  /**
   * The same of a figure that has been set in motion.
   *
   * @param frames of {@link #STEPS} a pose
   */
  static List<String> of(Figure figure, Motion motion, List<Stance> frames) {
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < figure.poses().size(); i++) {
      String pose = "pose " + (i + 1) + ": ";
      Stance stance = motion.keys().get(i);
      contacts(motion.contacts(i), stance.body(), pose, faults);
      floor(stance.body(), pose, faults);
      for (Angle angle : Angle.values()) {
        double drawn = stance.degrees()[angle.ordinal()];
        double written = figure.poses().get(i).degrees(angle);
        if (StrictMath.abs(drawn - written) > DEGREES_OFF) {
          faults.add(pose + angle.key() + " is " + whole(written) + ", needed is " + whole(drawn));
        }
        if (drawn > angle.most() + DEGREES_BEYOND || drawn < angle.least() - DEGREES_BEYOND) {
          faults.add(pose + angle.key() + " (" + whole(drawn) + ") is beyond its range");
        }
      }
    }
    for (int i = 0; i < frames.size(); i++) {
      floor(frames.get(i).body(), "after pose " + (i / STEPS + 1) + ": ", faults);
    }
    return faults.stream().distinct().toList();
  }

  private static void contacts(
      List<Contact> contacts, Body body, String pose, List<String> faults) {
    for (Contact contact : contacts) {
      double square = 0;
      for (double miss : contact.misses(body)) {
        square += miss * miss;
      }
      double miss = StrictMath.sqrt(square);
      if (miss > METRES) {
        faults.add(pose + name(contact.spot()) + " is off by " + centimetres(miss));
      }
    }
  }

  private static void floor(Body body, String pose, List<String> faults) {
    for (Spot spot : Spot.values()) {
      double gap = Surface.FLOOR.gap(spot, body.at(spot));
      if (gap < -METRES_BELOW) {
        faults.add(pose + name(spot) + " is below the floor by " + centimetres(-gap));
      }
    }
  }

  private static String name(Spot spot) {
    return spot.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String whole(double degrees) {
    return Long.toString(StrictMath.round(degrees));
  }

  private static String centimetres(double metres) {
    return SvgPath.number(metres * 100) + " cm";
  }
}

package counterset.figure;

import static counterset.model.Angle.*;

import counterset.model.Angle;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Joint angles to the points of a body whose hips are at the origin. */
final class Skeleton {

  private static final Vec UP = new Vec(0, 1, 0);
  private static final Vec DOWN = new Vec(0, -1, 0);
  private static final Vec FRONT = new Vec(1, 0, 0);

  private final ToDoubleFunction<Angle> angles;
  private final Map<Spot, Vec> spots = new EnumMap<>(Spot.class);

  private Skeleton(ToDoubleFunction<Angle> angles) {
    this.angles = angles;
  }

  /** The body that has these angles, in degrees. */
  static Body of(ToDoubleFunction<Angle> angles) {
    return new Skeleton(angles).body();
  }

  private Body body() {
    Turn pelvis =
        Turn.aboutY(-degrees(TURN))
            .after(Turn.aboutX(degrees(TILT)))
            .after(Turn.aboutZ(-degrees(LEAN)));
    spots.put(Spot.SEAT, Vec.ZERO);
    Vec waist = pelvis.of(UP).times(Proportions.PELVIS);
    spots.put(Spot.WAIST, waist);
    Turn ribs = spine(pelvis);
    spots.put(Spot.CHEST, waist.plus(ribs.of(UP).times(0.62 * Proportions.RIBS)));
    Vec top = waist.plus(ribs.of(UP).times(Proportions.RIBS));
    Turn head = ribs.after(Turn.aboutZ(-degrees(NECK)));
    Vec neck = top.plus(ribs.after(Turn.aboutZ(-degrees(NECK) / 2)).of(UP).times(Proportions.NECK));
    spots.put(Spot.NECK, neck);
    Vec skull = neck.plus(head.of(UP).times(Proportions.HEAD));
    spots.put(Spot.HEAD, skull);
    leg(pelvis, true);
    leg(pelvis, false);
    arm(top, ribs, true);
    arm(top, ribs, false);
    return new Body(spots, skull.plus(head.of(FRONT).times(Proportions.NOSE)));
  }

  private Turn spine(Turn pelvis) {
    return pelvis
        .after(Turn.aboutY(-degrees(SPINE_TWIST)))
        .after(Turn.aboutX(degrees(SPINE_SIDE)))
        .after(Turn.aboutZ(-degrees(SPINE_BEND)));
  }

  private void leg(Turn pelvis, boolean right) {
    double side = right ? 1 : -1;
    Turn thigh =
        pelvis
            .after(Turn.aboutZ(degrees(right ? RIGHT_HIP_FLEX : LEFT_HIP_FLEX)))
            .after(Turn.aboutX(-side * degrees(right ? RIGHT_HIP_OUT : LEFT_HIP_OUT)))
            .after(Turn.aboutY(-side * degrees(right ? RIGHT_HIP_TURN : LEFT_HIP_TURN)));
    Turn shank = thigh.after(Turn.aboutZ(-degrees(right ? RIGHT_KNEE : LEFT_KNEE)));
    Turn foot = shank.after(Turn.aboutZ(degrees(right ? RIGHT_ANKLE : LEFT_ANKLE)));
    Vec hip = pelvis.of(new Vec(0, 0, side * Proportions.HALF_HIPS));
    Vec knee = hip.plus(thigh.of(DOWN).times(Proportions.THIGH));
    Vec ankle = knee.plus(shank.of(DOWN).times(Proportions.SHANK));
    double sole = Proportions.ANKLE_HEIGHT - Spot.RIGHT_TOE.radius();
    spots.put(right ? Spot.RIGHT_HIP : Spot.LEFT_HIP, hip);
    spots.put(right ? Spot.RIGHT_KNEE : Spot.LEFT_KNEE, knee);
    spots.put(right ? Spot.RIGHT_ANKLE : Spot.LEFT_ANKLE, ankle);
    spots.put(
        right ? Spot.RIGHT_HEEL : Spot.LEFT_HEEL,
        ankle.plus(foot.of(new Vec(-Proportions.HEEL_BACK, -sole, 0))));
    spots.put(
        right ? Spot.RIGHT_TOE : Spot.LEFT_TOE,
        ankle.plus(foot.of(new Vec(Proportions.TOE_FRONT, -sole, 0))));
  }

  private void arm(Vec top, Turn ribs, boolean right) {
    double side = right ? 1 : -1;
    Turn collar = Turn.aboutX(-side * degrees(right ? RIGHT_SHRUG : LEFT_SHRUG));
    Vec shoulder =
        top.plus(ribs.of(collar.of(new Vec(0, -0.02, side * Proportions.HALF_SHOULDERS))));
    // The arm swings up in its plane, so that its own turn is free of it.
    Turn plane =
        Turn.aboutY(side * (degrees(right ? RIGHT_SHOULDER_PLANE : LEFT_SHOULDER_PLANE) - 90));
    Turn back =
        Turn.aboutY(-side * (degrees(right ? RIGHT_SHOULDER_PLANE : LEFT_SHOULDER_PLANE) - 90));
    Turn upper =
        ribs.after(plane)
            .after(Turn.aboutZ(degrees(right ? RIGHT_SHOULDER_RAISE : LEFT_SHOULDER_RAISE)))
            .after(back)
            .after(Turn.aboutY(-side * degrees(right ? RIGHT_SHOULDER_TURN : LEFT_SHOULDER_TURN)));
    Turn fore = upper.after(Turn.aboutZ(degrees(right ? RIGHT_ELBOW : LEFT_ELBOW)));
    Vec elbow = shoulder.plus(upper.of(DOWN).times(Proportions.UPPER_ARM));
    spots.put(right ? Spot.RIGHT_SHOULDER : Spot.LEFT_SHOULDER, shoulder);
    spots.put(right ? Spot.RIGHT_ELBOW : Spot.LEFT_ELBOW, elbow);
    spots.put(
        right ? Spot.RIGHT_HAND : Spot.LEFT_HAND,
        elbow.plus(fore.of(DOWN).times(Proportions.FOREARM + Proportions.FIST)));
  }

  private double degrees(Angle angle) {
    return angles.applyAsDouble(angle);
  }
}

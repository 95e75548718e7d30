package counterset.figure;

/**
 * The lengths of the body's segments in metres.
 *
 * <p>As parts of the stature after Drillis and Contini (1966), as printed in Winter, "Biomechanics
 * and Motor Control of Human Movement": from memory. The hand is closed, and hip and shoulder
 * joints lie inside the outline, so those three are shorter than the tables have them.
 */
final class Proportions {

  static final double STATURE = 1.70;
  static final double THIGH = 0.245 * STATURE;
  static final double SHANK = 0.246 * STATURE;
  static final double ANKLE_HEIGHT = 0.039 * STATURE;
  static final double FOOT = 0.152 * STATURE;
  static final double UPPER_ARM = 0.186 * STATURE;
  static final double FOREARM = 0.146 * STATURE;
  static final double TRUNK = 0.288 * STATURE;

  static final double FIST = 0.05;
  static final double HALF_SHOULDERS = 0.175;
  static final double HALF_HIPS = 0.088;

  /** From the hips to the lowest joint of the spine that bends, and on to the shoulders. */
  static final double PELVIS = 0.35 * TRUNK;

  static final double RIBS = TRUNK - PELVIS;
  static final double NECK = 0.1;
  static final double HEAD = 0.13;
  static final double NOSE = 0.115;
  static final double HEEL_BACK = 0.25 * FOOT;
  static final double TOE_FRONT = 0.55 * FOOT;

  private Proportions() {}
}

package counterset.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterset.model.Angle;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Angles of single joints, looked up as a goniometer would read them. */
class SkeletonTest {

  private static final Offset<Double> CLOSE = within(1e-9);

  /**
   * Heights over the floor as parts of the stature: Drillis and Contini (1966), as printed in
   * Winter, "Biomechanics and Motor Control of Human Movement", figure 4.1; from memory. Knee
   * 0.285, hip 0.530, shoulder 0.818.
   */
  @Test
  void standsAsTallAsTheTableSays() {
    Body body = body(Map.of());
    double floor = body.at(Spot.RIGHT_HEEL).y() - Spot.RIGHT_HEEL.radius();

    assertThat(body.at(Spot.RIGHT_KNEE).y() - floor).isCloseTo(0.285 * 1.70, within(0.001));
    assertThat(body.at(Spot.RIGHT_HIP).y() - floor).isCloseTo(0.530 * 1.70, within(0.001));
    assertThat(body.at(Spot.RIGHT_SHOULDER).y() - floor).isCloseTo(0.818 * 1.70, within(0.021));
    assertThat(body.at(Spot.HEAD).y() + Spot.HEAD.radius() - floor).isCloseTo(1.70, within(0.03));
  }

  @Test
  void looksAhead() {
    Body body = body(Map.of());

    assertThat(body.nose().x()).isGreaterThan(body.at(Spot.HEAD).x() + 0.05);
    assertThat(body.at(Spot.RIGHT_TOE).x()).isGreaterThan(body.at(Spot.RIGHT_HEEL).x());
    assertThat(body.at(Spot.RIGHT_HAND).z()).isPositive();
    assertThat(body.at(Spot.LEFT_HAND).z()).isNegative();
  }

  @Test
  void flexionGoesToTheFront() {
    Body body =
        body(
            Map.of(
                Angle.RIGHT_HIP_FLEX, 90.0,
                Angle.RIGHT_KNEE, 90.0,
                Angle.RIGHT_SHOULDER_RAISE, 90.0,
                Angle.LEFT_ELBOW, 90.0));

    assertThat(body.at(Spot.RIGHT_KNEE).x()).isCloseTo(Proportions.THIGH, CLOSE);
    assertThat(body.at(Spot.RIGHT_ANKLE).y())
        .isCloseTo(body.at(Spot.RIGHT_KNEE).y() - Proportions.SHANK, CLOSE);
    assertThat(body.at(Spot.RIGHT_ELBOW).x())
        .isCloseTo(body.at(Spot.RIGHT_SHOULDER).x() + Proportions.UPPER_ARM, CLOSE);
    assertThat(body.at(Spot.LEFT_HAND).x()).isGreaterThan(body.at(Spot.LEFT_ELBOW).x() + 0.2);
  }

  @Test
  void abductionAndOutwardTurnGoOutOnBothSides() {
    Body body =
        body(
            Map.of(
                Angle.RIGHT_HIP_OUT, 30.0,
                Angle.LEFT_HIP_OUT, 30.0,
                Angle.RIGHT_HIP_TURN, 45.0,
                Angle.LEFT_HIP_TURN, 45.0));

    assertThat(body.at(Spot.RIGHT_ANKLE).z()).isGreaterThan(0.4);
    assertThat(body.at(Spot.LEFT_ANKLE).z()).isLessThan(-0.4);
    assertThat(body.at(Spot.RIGHT_TOE).z()).isGreaterThan(body.at(Spot.RIGHT_HEEL).z());
    assertThat(body.at(Spot.LEFT_TOE).z()).isLessThan(body.at(Spot.LEFT_HEEL).z());
  }

  /** Arms to the side, elbows bent, turned outward by a right angle: the hands point up. */
  @Test
  void anArmTurnsAboutItself() {
    Body body =
        body(
            Map.of(
                Angle.RIGHT_SHOULDER_PLANE, 0.0,
                Angle.RIGHT_SHOULDER_RAISE, 90.0,
                Angle.RIGHT_SHOULDER_TURN, 90.0,
                Angle.RIGHT_ELBOW, 90.0));

    assertThat(body.at(Spot.RIGHT_HAND).x()).isCloseTo(body.at(Spot.RIGHT_ELBOW).x(), CLOSE);
    assertThat(body.at(Spot.RIGHT_HAND).y())
        .isCloseTo(body.at(Spot.RIGHT_ELBOW).y() + Proportions.FOREARM + Proportions.FIST, CLOSE);
  }

  @Test
  void liesOnBackFaceAndSide() {
    Body back = body(Map.of(Angle.LEAN, -90.0));
    Body face = body(Map.of(Angle.LEAN, 90.0));
    Body left = body(Map.of(Angle.TILT, -90.0));

    assertThat(back.nose().y()).isGreaterThan(back.at(Spot.HEAD).y() + 0.05);
    assertThat(face.nose().y()).isLessThan(face.at(Spot.HEAD).y() - 0.05);
    assertThat(left.at(Spot.RIGHT_SHOULDER).y())
        .isGreaterThan(left.at(Spot.LEFT_SHOULDER).y() + 0.2);
  }

  @Test
  void theSpineBendsSidewaysAndTurnsToTheRight() {
    Body side = body(Map.of(Angle.SPINE_SIDE, 30.0));
    Body twist = body(Map.of(Angle.SPINE_TWIST, 40.0));

    assertThat(side.at(Spot.HEAD).z()).isGreaterThan(0.1);
    assertThat(twist.at(Spot.LEFT_SHOULDER).x()).isGreaterThan(0.05);
    assertThat(twist.at(Spot.RIGHT_SHOULDER).x()).isLessThan(-0.05);
  }

  private static Body body(Map<Angle, Double> angles) {
    return Skeleton.of(angle -> angles.getOrDefault(angle, angle.usual()));
  }
}

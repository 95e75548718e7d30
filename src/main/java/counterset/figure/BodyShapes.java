package counterset.figure;

import counterset.figure.Shape.Look;
import counterset.model.Figure.View;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The strokes of a body. */
final class BodyShapes {

  private static final double TRUNK = 16;
  private static final double THIGH = 12.5;
  private static final double SHANK = 9.5;
  private static final double FOOT = 5;
  private static final double UPPER_ARM = 8;
  private static final double FOREARM = 6.5;
  private static final double HAND = 7.5;
  private static final double NECK = 8;
  private static final double HEAD = 19;
  private static final double NOSE = 4;

  /** In metres: the neck runs into the head, not over it. */
  private static final double HEAD_NEARER = 0.04;

  private final Body body;
  private final Camera camera;
  private final List<Shape> shapes = new ArrayList<>();

  private BodyShapes(Body body, Camera camera) {
    this.body = body;
    this.camera = camera;
  }

  /** In an order that is the same for all bodies. */
  static List<Shape> of(Body body, Camera camera) {
    BodyShapes drawn = new BodyShapes(body, camera);
    drawn.trunk();
    drawn.head();
    drawn.limbs(true);
    drawn.limbs(false);
    return drawn.shapes;
  }

  private void trunk() {
    Vec rightShoulder = body.at(Spot.RIGHT_SHOULDER);
    Vec leftShoulder = body.at(Spot.LEFT_SHOULDER);
    Vec rightHip = body.at(Spot.RIGHT_HIP);
    Vec leftHip = body.at(Spot.LEFT_HIP);
    Vec top = rightShoulder.towards(leftShoulder, 0.5).towards(body.at(Spot.CHEST), 0.2);
    Vec across = rightShoulder.minus(leftShoulder).plus(rightHip.minus(leftHip)).times(0.1);
    Vec waist = body.at(Spot.WAIST);
    Vec seat = body.at(Spot.SEAT);
    add(
        Look.NEAR,
        TRUNK,
        true,
        0,
        top.plus(rightShoulder.minus(leftShoulder).times(0.3)),
        top.plus(leftShoulder.minus(rightShoulder).times(0.3)),
        waist.minus(across),
        seat.towards(leftHip, 0.7),
        seat.towards(rightHip, 0.7),
        waist.plus(across));
  }

  /** The nose is seen only where it stands out from the head. */
  private void head() {
    Vec head = body.at(Spot.HEAD);
    Vec base = body.at(Spot.RIGHT_SHOULDER).towards(body.at(Spot.LEFT_SHOULDER), 0.5);
    Vec chin = body.at(Spot.NECK).towards(head, 0.3);
    add(Look.NEAR, NECK, false, 0.001, base, chin);
    double nearness = camera.nearness(head);
    shapes.add(new Shape(Look.NOSE, NOSE, false, dots(head, body.nose()), nearness + HEAD_NEARER));
    shapes.add(new Shape(Look.NEAR, HEAD, false, dots(head, head), nearness + HEAD_NEARER + 0.001));
  }

  private void limbs(boolean right) {
    boolean far = camera.view() == View.SIDE && !right;
    Look look = far ? Look.FAR : Look.NEAR;
    Vec hip = body.at(right ? Spot.RIGHT_HIP : Spot.LEFT_HIP);
    Vec knee = body.at(right ? Spot.RIGHT_KNEE : Spot.LEFT_KNEE);
    Vec ankle = body.at(right ? Spot.RIGHT_ANKLE : Spot.LEFT_ANKLE);
    Vec heel = body.at(right ? Spot.RIGHT_HEEL : Spot.LEFT_HEEL);
    Vec toe = body.at(right ? Spot.RIGHT_TOE : Spot.LEFT_TOE);
    add(look, THIGH, false, 0, hip, knee);
    add(look, SHANK, false, 0, knee, ankle);
    add(look, FOOT, true, 0, ankle, heel, toe);
    Vec shoulder = body.at(right ? Spot.RIGHT_SHOULDER : Spot.LEFT_SHOULDER);
    Vec elbow = body.at(right ? Spot.RIGHT_ELBOW : Spot.LEFT_ELBOW);
    Vec hand = body.at(right ? Spot.RIGHT_HAND : Spot.LEFT_HAND);
    add(look, UPPER_ARM, false, 0, shoulder, elbow);
    add(look, FOREARM, false, 0, elbow, hand);
    add(look, HAND, false, 0, hand, hand);
  }

  private void add(Look look, double width, boolean closed, double nearer, Vec... points) {
    double nearness = 0;
    for (Vec point : points) {
      nearness += camera.nearness(point) / points.length;
    }
    shapes.add(new Shape(look, width, closed, dots(points), nearness + nearer));
  }

  private List<Dot> dots(Vec... points) {
    return Arrays.stream(points).map(camera::dot).toList();
  }
}

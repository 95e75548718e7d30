package counterset.figure;

import counterset.figure.Shape.Look;
import counterset.model.Figure;
import java.util.List;

/** The strokes of what is too large for one hand, and of the sloped back of a bench. */
final class LargeItemShapes {

  private static final double NEARER = 0.01;
  private static final double BEFORE_ALL = 1;
  private static final double BEHIND_ALL = -9;
  private static final double HALF_BAR = 0.55;
  private static final double BAR = 3.5;
  private static final double PLATE = 16;
  private static final double BALL = 22;
  private static final double BAG = 20;
  private static final double HALF_BAG = 0.1;
  private static final double BOARD = 4.5;
  private static final double LEG = 3;
  private static final double ON_SHOULDERS = 0.1;
  private static final double ON_HIPS = 0.15;
  private static final double ON_BACK = 0.2;
  private static final double TO_BOARD = 0.14;

  private final Body body;
  private final Camera camera;
  private final Vec up;
  private final Vec right;
  private final Vec front;

  private LargeItemShapes(Body body, Camera camera) {
    this.body = body;
    this.camera = camera;
    up = unit(body.at(Spot.CHEST).minus(body.at(Spot.WAIST)));
    right = unit(body.at(Spot.RIGHT_SHOULDER).minus(body.at(Spot.LEFT_SHOULDER)));
    front = unit(up.cross(right));
  }

  /** None for equipment that is drawn elsewhere or not at all. */
  static List<Shape> of(String equipment, Figure figure, Body body, Camera camera) {
    LargeItemShapes drawn = new LargeItemShapes(body, camera);
    String load = figure.load().orElse("hands");
    Vec at = drawn.middle(load);
    return switch (equipment) {
      case "barbell" -> drawn.barbell(at.plus(drawn.aside(load)));
      case "medicine-ball" -> List.of(drawn.stroke(BALL, BEFORE_ALL, at, at));
      case "backpack" -> drawn.bag(load, at);
      case "incline-bench" -> drawn.board();
      default -> List.of();
    };
  }

  /** A bar on the neck lies behind it, one on the shoulders or hips in front of them. */
  private Vec aside(String load) {
    return switch (load) {
      case "neck" -> front.times(-ON_SHOULDERS).minus(up.times(ON_SHOULDERS / 2));
      case "shoulders" -> front.times(ON_SHOULDERS);
      case "seat" -> front.times(ON_HIPS);
      default -> Vec.ZERO;
    };
  }

  private List<Shape> barbell(Vec at) {
    Vec one = at.plus(right.times(HALF_BAR));
    Vec other = at.minus(right.times(HALF_BAR));
    return List.of(
        stroke(BAR, NEARER, one, other),
        stroke(PLATE, NEARER, one, one),
        stroke(PLATE, NEARER, other, other));
  }

  /** On the back if it is at the chest, else where the figure says. */
  private List<Shape> bag(String load, Vec at) {
    boolean worn = load.equals("chest");
    Vec middle = worn ? at.minus(front.times(ON_BACK)) : at;
    Vec half = up.times(HALF_BAG);
    return List.of(stroke(BAG, BEFORE_ALL, middle.plus(half), middle.minus(half)));
  }

  /** On the side of the trunk that is turned to the floor. */
  private List<Shape> board() {
    Vec off = front.times(front.y() < 0 ? TO_BOARD : -TO_BOARD);
    Vec low = body.at(Spot.SEAT).plus(off);
    Vec high = body.at(Spot.NECK).plus(off);
    Vec middle = low.towards(high, 0.5);
    Vec floor = new Vec(middle.x(), 0, middle.z());
    return List.of(
        new Shape(
            Look.THING, LEG, false, List.of(camera.dot(middle), camera.dot(floor)), BEHIND_ALL),
        new Shape(
            Look.THING, BOARD, false, List.of(camera.dot(low), camera.dot(high)), BEHIND_ALL));
  }

  /** A dot if both ends are one. */
  private Shape stroke(double width, double nearer, Vec from, Vec to) {
    double nearness = camera.nearness(from.towards(to, 0.5)) + nearer;
    return new Shape(Look.ITEM, width, false, List.of(camera.dot(from), camera.dot(to)), nearness);
  }

  private Vec middle(String load) {
    Vec sum = Vec.ZERO;
    List<Spot> spots = Spot.named(load).orElseThrow();
    for (Spot spot : spots) {
      sum = sum.plus(body.at(spot).times(1.0 / spots.size()));
    }
    return sum;
  }

  private static Vec unit(Vec vec) {
    return vec.times(1 / vec.length());
  }
}

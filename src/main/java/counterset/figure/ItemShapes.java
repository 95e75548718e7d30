package counterset.figure;

import counterset.figure.Shape.Look;
import counterset.model.Exercise;
import counterset.model.Figure;
import counterset.model.Need;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The strokes of what a body holds and wears, as far as it is one of the things known here. */
final class ItemShapes {

  private static final double NEARER = 0.01;
  private static final double BEFORE_ALL = 1;
  private static final double ON_HIPS = 0.13;
  private static final double HALF_HANDLE = 7;
  private static final double HANDLE = 3.5;
  private static final double PLATE = 5.5;
  private static final double HALF_PLATE = 4;
  private static final double BELL = 15;
  private static final double BELL_DROP = 12;
  private static final double CUFF = 6.5;
  private static final double HALF_CUFF = 5.5;
  private static final double LOOP = 3.5;
  private static final double HALF_LOOP = 7;
  private static final double LONG_BAND = 2.2;

  private final Figure figure;
  private final Body body;
  private final Camera camera;
  private final Vec anchorage;
  private final List<Shape> shapes = new ArrayList<>();

  private ItemShapes(Figure figure, Body body, Camera camera, Vec anchorage) {
    this.figure = figure;
    this.body = body;
    this.camera = camera;
    this.anchorage = anchorage;
  }

  /**
   * In an order that is the same for all bodies of a figure.
   *
   * @param anchorage the floor below the hips of the first pose, which anchors are placed from
   */
  static List<Shape> of(Exercise exercise, Figure figure, Body body, Camera camera, Vec anchorage) {
    ItemShapes drawn = new ItemShapes(figure, body, camera, anchorage);
    exercise.needs().forEach(drawn::need);
    return drawn.shapes;
  }

  private void need(Need need) {
    switch (need.equipment()) {
      case "dumbbell", "kettlebell" -> weights(need);
      case "ankle-weights" -> {
        ring(Spot.RIGHT_ANKLE, Spot.RIGHT_KNEE, HALF_CUFF, CUFF, Look.ITEM);
        ring(Spot.LEFT_ANKLE, Spot.LEFT_KNEE, HALF_CUFF, CUFF, Look.ITEM);
      }
      case "loop-band" -> figure.loop().ifPresent(this::loop);
      case "long-band", "assist-band", "suspension-straps", "skipping-rope" ->
          figure.bands().forEach(this::band);
      // What stands around is drawn as a thing of the figure.
      default -> shapes.addAll(LargeItemShapes.of(need.equipment(), figure, body, camera));
    }
  }

  private void weights(Need need) {
    boolean bell = need.equipment().equals("kettlebell");
    if (figure.load().isPresent()) {
      List<Spot> spots = Spot.named(figure.load().get()).orElseThrow();
      Vec middle = Vec.ZERO;
      for (Spot spot : spots) {
        middle = middle.plus(body.at(spot).times(1.0 / spots.size()));
      }
      if (spots.get(0) == Spot.SEAT || spots.get(0).name().endsWith("HIP")) {
        onHips(middle, bell);
        return;
      }
      boolean hands = spots.size() > 1 && spots.contains(Spot.RIGHT_HAND);
      Dot from = camera.dot(middle).plus(hands ? 10 : 0, hands ? 0 : 10);
      double nearer = spots.size() > 1 ? NEARER : BEFORE_ALL;
      weight(middle, from, bell, camera.nearness(middle) + nearer);
      return;
    }
    weight(body.at(Spot.RIGHT_HAND), camera.dot(body.at(Spot.RIGHT_ELBOW)), bell);
    if (need.count() > 1) {
      weight(body.at(Spot.LEFT_HAND), camera.dot(body.at(Spot.LEFT_ELBOW)), bell);
    }
  }

  /** A weight lies in front of the hips, whatever else is there. */
  private void onHips(Vec hips, boolean bell) {
    Vec up = body.at(Spot.WAIST).minus(body.at(Spot.SEAT));
    Vec right = body.at(Spot.RIGHT_HIP).minus(body.at(Spot.LEFT_HIP));
    Vec front = up.cross(right).times(ON_HIPS / (Proportions.PELVIS * 2 * Proportions.HALF_HIPS));
    Vec at = hips.plus(front);
    weight(at, camera.dot(at.plus(front)), bell, camera.nearness(at) + BEFORE_ALL);
  }

  private void weight(Vec at, Dot from, boolean bell) {
    weight(at, from, bell, camera.nearness(at) + NEARER);
  }

  /** A weight whose handle lies across the way to a point. */
  private void weight(Vec at, Dot from, boolean bell, double nearness) {
    Dot hand = camera.dot(at);
    if (bell) {
      Dot below = hand.plus(0, BELL_DROP);
      shapes.add(
          new Shape(
              Look.ITEM,
              HANDLE,
              true,
              List.of(hand.plus(-3, 0), hand.plus(3, 0), below.plus(4, -3), below.plus(-4, -3)),
              nearness));
      shapes.add(new Shape(Look.ITEM, BELL, false, List.of(below, below), nearness + 0.001));
      return;
    }
    Dot one = hand.across(from, HALF_HANDLE);
    Dot other = hand.across(from, -HALF_HANDLE);
    shapes.add(new Shape(Look.ITEM, HANDLE, false, List.of(one, other), nearness));
    for (Dot end : List.of(one, other)) {
      shapes.add(
          new Shape(
              Look.ITEM,
              PLATE,
              false,
              List.of(end.across(hand, HALF_PLATE), end.across(hand, -HALF_PLATE)),
              nearness + 0.001));
    }
  }

  private void loop(String pair) {
    List<Spot> spots = Spot.named(pair).orElseThrow();
    for (Spot spot : spots) {
      ring(spot, above(spot), HALF_LOOP, LOOP, Look.BAND);
    }
    Vec one = raised(spots.get(0));
    Vec other = raised(spots.get(1));
    double nearness =
        StrictMath.max(limbNearness(spots.get(0)), limbNearness(spots.get(1))) + NEARER;
    shapes.add(
        new Shape(Look.BAND, LOOP, false, List.of(camera.dot(one), camera.dot(other)), nearness));
  }

  /** A little nearer to the trunk than the joint. */
  private Vec raised(Spot spot) {
    return body.at(spot).towards(body.at(above(spot)), 0.15);
  }

  private void ring(Spot spot, Spot above, double half, double width, Look look) {
    Vec at = body.at(spot).towards(body.at(above), 0.15);
    Dot middle = camera.dot(at);
    Dot along = camera.dot(body.at(above));
    shapes.add(
        new Shape(
            look,
            width,
            false,
            List.of(middle.across(along, half), middle.across(along, -half)),
            limbNearness(spot) + NEARER));
  }

  /** Of the point or of its limb, whichever is nearer to the eye, so that the limb is behind it. */
  private double limbNearness(Spot spot) {
    double joint = camera.nearness(body.at(spot));
    return StrictMath.max(joint, camera.nearness(body.at(spot).towards(body.at(above(spot)), 0.5)));
  }

  private static Spot above(Spot spot) {
    return switch (spot) {
      case RIGHT_KNEE -> Spot.RIGHT_HIP;
      case LEFT_KNEE -> Spot.LEFT_HIP;
      case RIGHT_ANKLE -> Spot.RIGHT_KNEE;
      case LEFT_ANKLE -> Spot.LEFT_KNEE;
      case RIGHT_TOE -> Spot.RIGHT_HEEL;
      case LEFT_TOE -> Spot.LEFT_HEEL;
      case RIGHT_HAND -> Spot.RIGHT_ELBOW;
      case LEFT_HAND -> Spot.LEFT_ELBOW;
      case RIGHT_ELBOW -> Spot.RIGHT_SHOULDER;
      case LEFT_ELBOW -> Spot.LEFT_SHOULDER;
      default -> Spot.SEAT;
    };
  }

  private void band(List<String> points) {
    List<Dot> dots = new ArrayList<>();
    double nearness = Double.NEGATIVE_INFINITY;
    for (String point : points) {
      Optional<Vec> anchor = Anchors.place(point).map(anchorage::plus);
      Vec at = anchor.orElseGet(() -> middle(Spot.named(point).orElseThrow()));
      dots.add(camera.dot(at));
      nearness = StrictMath.max(nearness, camera.nearness(at));
      anchor.ifPresent(
          place ->
              shapes.add(
                  new Shape(
                      Look.THING,
                      5,
                      false,
                      List.of(camera.dot(place), camera.dot(place)),
                      camera.nearness(place))));
    }
    shapes.add(new Shape(Look.BAND, LONG_BAND, false, dots, nearness + NEARER));
  }

  private Vec middle(List<Spot> spots) {
    Vec sum = Vec.ZERO;
    for (Spot spot : spots) {
      sum = sum.plus(body.at(spot));
    }
    return sum.times(1.0 / spots.size());
  }
}

package counterset.figure;

import counterset.figure.Shape.Look;
import counterset.model.Figure.Prop;
import counterset.model.Figure.View;
import counterset.model.Figure.Where;
import java.util.ArrayList;
import java.util.List;

/** The strokes of what stands around a body. */
final class ThingShapes {

  private static final double BEHIND_ALL = -10;
  private static final double LEG = 3;
  private static final double BOARD = 4.5;
  private static final double WALL = 4;
  private static final double WALL_TOP = 2.1;
  private static final double PANEL = 1.6;
  private static final double HALF_PANEL = 0.55;
  private static final double BEHIND_BACK = 0.1;

  private final Scene scene;
  private final Camera camera;
  private final List<Shape> shapes = new ArrayList<>();

  private ThingShapes(Scene scene, Camera camera) {
    this.scene = scene;
    this.camera = camera;
  }

  /**
   * In an order that is the same for all bodies of a figure.
   *
   * @param placed the body when it first touched the thing
   * @param now the body that is drawn
   */
  static List<Shape> of(Prop prop, Scene scene, Body placed, Body now, Camera camera) {
    ThingShapes drawn = new ThingShapes(scene, camera);
    Body body = Scene.isCarriedAlong(prop) ? now : placed;
    List<Vec> at = Scene.spots(prop).stream().map(body::at).toList();
    Vec middle = Vec.ZERO;
    for (Vec one : at) {
      middle = middle.plus(one.times(1.0 / at.size()));
    }
    drawn.draw(prop, middle, at);
    return drawn.shapes;
  }

  private void draw(Prop prop, Vec at, List<Vec> all) {
    Vec floor = new Vec(at.x(), 0, at.z());
    switch (prop.thing()) {
      case CHAIR -> chair(prop, floor);
      case STEP -> box(floor, Things.STEP_LENGTH, Things.height(prop));
      case BENCH -> box(floor, Things.BENCH_LENGTH, Things.height(prop));
      case BALL -> line(Things.BALL * 100 - 2, ball(prop, at));
      case SLIDER -> all.forEach(one -> slider(new Vec(one.x(), 0, one.z())));
      case DUMBBELL -> all.forEach(one -> dumbbell(new Vec(one.x(), 0, one.z())));
      case WALL -> scene.wall(prop).ifPresent(face -> wall(prop, face, at));
      case BAR -> bar(new Vec(at.x(), Things.BAR_HEIGHT, at.z()));
    }
  }

  private void chair(Prop prop, Vec floor) {
    boolean byBack = prop.height() >= Things.CHAIR_BACK;
    Vec back = Things.away(prop.where());
    Vec middle = byBack ? floor.minus(back.times(Things.CHAIR_DEPTH / 2)) : floor;
    Vec rear = middle.plus(back.times(Things.CHAIR_DEPTH / 2));
    Vec front = middle.minus(back.times(Things.CHAIR_DEPTH / 2));
    double seat = Things.CHAIR_SEAT - 0.03;
    line(LEG, front, front.plus(up(seat)));
    line(LEG, rear, rear.plus(up(Things.CHAIR_BACK)));
    line(BOARD, front.plus(up(seat)), rear.plus(up(seat)));
    boolean faces = camera.view() != View.SIDE && back.x() != 0;
    if (faces) {
      Vec half = new Vec(0, 0, Things.CHAIR_DEPTH / 2);
      for (Vec side : List.of(half, half.times(-1))) {
        line(LEG, middle.plus(side), middle.plus(side).plus(up(Things.CHAIR_BACK)));
      }
      for (double height : List.of(seat, Things.CHAIR_BACK - 0.03)) {
        line(BOARD, middle.minus(half).plus(up(height)), middle.plus(half).plus(up(height)));
      }
    }
  }

  private void box(Vec floor, double length, double height) {
    boolean along = camera.view() == View.SIDE || camera.view() == View.ABOVE;
    Vec half = along ? new Vec(length / 2, 0, 0) : new Vec(0, 0, length / 2 + 0.1);
    double thin = 0.02;
    shape(
        4,
        true,
        floor.minus(half).plus(up(thin)),
        floor.plus(half).plus(up(thin)),
        floor.plus(half).plus(up(height - thin)),
        floor.minus(half).plus(up(height - thin)));
  }

  private void slider(Vec floor) {
    boolean along = camera.view() == View.SIDE || camera.view() == View.ABOVE;
    Vec half = along ? new Vec(0.1, 0, 0) : new Vec(0, 0, 0.1);
    line(2.5, floor.minus(half).plus(up(0.01)), floor.plus(half).plus(up(0.01)));
  }

  private void dumbbell(Vec floor) {
    Vec half = new Vec(0.09, 0, 0);
    line(3.5, floor.minus(half).plus(up(0.05)), floor.plus(half).plus(up(0.05)));
    for (Vec end : List.of(floor.minus(half), floor.plus(half))) {
      line(4.5, end.plus(up(0.02)), end.plus(up(0.08)));
    }
  }

  private void wall(Prop prop, Surface face, Vec at) {
    double gap = scene.isBehindBall(prop) ? Things.BALL : 0;
    Vec foot = face.normal().times(face.offset() - 0.02 - gap);
    boolean seenFromSide =
        (camera.view() == View.SIDE || camera.view() == View.ABOVE)
            == (prop.where() == Where.AHEAD || prop.where() == Where.BEHIND);
    if (seenFromSide && camera.view() != View.ABOVE) {
      Vec base = new Vec(foot.x(), 0, face.normal().x() != 0 ? at.z() * 0 : foot.z());
      line(WALL, base, base.plus(up(WALL_TOP)));
    } else if (camera.view() == View.ABOVE) {
      Vec along = new Vec(face.normal().z(), 0, face.normal().x()).times(0.8);
      line(WALL, foot.minus(along), foot.plus(along));
    } else {
      panel(new Vec(at.x(), 0, at.z()), face);
    }
  }

  /** A wall that is looked at squarely, as far as it is behind the body. */
  private void panel(Vec foot, Surface face) {
    Vec half = new Vec(face.normal().z(), 0, face.normal().x()).times(HALF_PANEL);
    Vec one = foot.minus(half);
    Vec other = foot.plus(half);
    line(PANEL, one, one.plus(up(WALL_TOP)), other.plus(up(WALL_TOP)), other);
  }

  /** Where the middle of a ball is: on the floor if it carries the body, else where it is held. */
  private Vec ball(Prop prop, Vec at) {
    boolean carries = at.y() > Things.BALL - 0.02 && at.y() < Things.BALL + 0.15;
    if (carries) {
      return new Vec(at.x(), Things.BALL / 2, at.z());
    }
    double away = prop.where() == Where.BEHIND ? Things.BALL / 2 + BEHIND_BACK : 0;
    if (prop.where() == Where.AHEAD && scene.isAtWall(prop)) {
      away = Things.BALL / 2;
    }
    Vec above = new Vec(at.x(), StrictMath.max(at.y(), Things.BALL / 2), at.z());
    return above.plus(Things.away(prop.where()).times(away));
  }

  private void bar(Vec at) {
    Vec half = new Vec(0, 0, 0.45);
    line(4, at.minus(half), at.plus(half));
  }

  private static Vec up(double metres) {
    return new Vec(0, metres, 0);
  }

  private void line(double width, Vec... points) {
    shape(width, false, points);
  }

  private void shape(double width, boolean closed, Vec... points) {
    List<Dot> dots = new ArrayList<>();
    for (Vec point : points) {
      dots.add(camera.dot(point));
    }
    if (dots.size() == 1) {
      dots.add(dots.get(0));
    }
    shapes.add(new Shape(Look.THING, width, closed, dots, BEHIND_ALL));
  }
}

package counterset.figure;

import counterset.model.Angle;
import counterset.model.Figure;
import counterset.model.Pose;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The poses of a figure, each standing where it says it stands, and what lies between them.
 *
 * <p>A point that stands has one place in all poses that it stands in.
 */
final class Motion {

  private final Figure figure;
  private final Scene scene;
  private final Map<Spot, Vec> places = new EnumMap<>(Spot.class);
  private final List<Stance> keys = new ArrayList<>();

  Motion(Figure figure) {
    this.figure = figure;
    this.scene = new Scene(figure);
    figure.poses().forEach(this::add);
  }

  Scene scene() {
    return scene;
  }

  /** The poses in their places. */
  List<Stance> keys() {
    return List.copyOf(keys);
  }

  /**
   * The whole way through all poses and back to the first.
   *
   * @param between how many steps lead from one pose to the next, at least 1
   */
  List<Stance> frames(int between) {
    return held(between).stream().map(Held::stance).toList();
  }

  /** The same, each with the contacts that hold in it. */
  List<Held> held(int between) {
    List<Held> frames = new ArrayList<>();
    for (int i = 0; i < keys.size(); i++) {
      int next = (i + 1) % keys.size();
      frames.add(new Held(keys.get(i), contacts(i)));
      List<Contact> kept = kept(figure.poses().get(i), figure.poses().get(next));
      for (int step = 1; step < between; step++) {
        Stance start = keys.get(i).towards(keys.get(next), eased((double) step / between));
        frames.add(new Held(Fit.of(start, kept), kept));
      }
    }
    frames.add(frames.get(0));
    return frames;
  }

  /** A stance and what it touches. */
  record Held(Stance stance, List<Contact> contacts) {}

  /** The contacts of a pose, as they ended up. */
  List<Contact> contacts(int pose) {
    return contacts(figure.poses().get(pose), keys.get(pose).body());
  }

  /** The body in the first pose in which it touches a thing. */
  Body placed(Figure.Prop prop) {
    List<Spot> spots = Scene.spots(prop);
    for (int i = 0; i < keys.size(); i++) {
      if (touching(figure.poses().get(i)).stream().anyMatch(spots::contains)) {
        return keys.get(i).body();
      }
    }
    return keys.get(0).body();
  }

  /** Slow at both ends, as a limb moves. */
  private static double eased(double part) {
    return part * part * (3 - 2 * part);
  }

  private void add(Pose pose) {
    double[] degrees = new double[Angle.values().length];
    for (Angle angle : Angle.values()) {
      degrees[angle.ordinal()] = pose.degrees(angle);
    }
    Stance loose = new Stance(degrees, Vec.ZERO);
    Stance placed = new Stance(degrees, hips(pose, loose.body()));
    Stance fitted = Fit.of(placed, contacts(pose, placed.body()));
    Body body = fitted.body();
    spots(pose.stands()).forEach(spot -> places.putIfAbsent(spot, body.at(spot)));
    keys.add(fitted);
  }

  /** Where the hips have to be for the body to stand about right. */
  private Vec hips(Pose pose, Body body) {
    List<Spot> known = spots(pose.stands()).stream().filter(places::containsKey).toList();
    Vec sum = Vec.ZERO;
    for (Spot spot : known) {
      sum = sum.plus(places.get(spot).minus(body.at(spot)));
    }
    if (!known.isEmpty()) {
      return sum.times(1.0 / known.size());
    }
    Vec before = keys.isEmpty() ? Vec.ZERO : keys.get(keys.size() - 1).hips();
    double up = Double.NEGATIVE_INFINITY;
    for (Spot spot : touching(pose)) {
      Surface face = scene.under(spot, body);
      if (face.normal().y() > 0) {
        up = StrictMath.max(up, -face.gap(spot, body.at(spot)));
      }
    }
    if (up == Double.NEGATIVE_INFINITY) {
      for (Spot spot : Spot.values()) {
        up = StrictMath.max(up, pose.lift() - Surface.FLOOR.gap(spot, body.at(spot)));
      }
    }
    return new Vec(before.x(), up, before.z());
  }

  private List<Contact> contacts(Pose pose, Body body) {
    Set<Spot> stands = spots(pose.stands());
    return touching(pose).stream()
        .map(
            spot ->
                new Contact(
                    spot,
                    scene.under(spot, body),
                    stands.contains(spot)
                        ? Optional.ofNullable(places.get(spot))
                        : Optional.empty()))
        .toList();
  }

  /** What holds all the way from one pose to another. */
  private List<Contact> kept(Pose from, Pose to) {
    Set<Spot> stands = spots(from.stands());
    stands.retainAll(spots(to.stands()));
    Set<Spot> touching = touching(from);
    touching.retainAll(touching(to));
    Body any = keys.get(0).body();
    return touching.stream()
        .map(
            spot ->
                new Contact(
                    spot,
                    scene.under(spot, any),
                    stands.contains(spot) ? Optional.of(places.get(spot)) : Optional.empty()))
        .toList();
  }

  private static Set<Spot> touching(Pose pose) {
    Set<Spot> all = spots(pose.stands());
    all.addAll(spots(pose.slides()));
    return all;
  }

  private static Set<Spot> spots(List<String> names) {
    Set<Spot> spots = new LinkedHashSet<>();
    names.forEach(name -> spots.addAll(Spot.named(name).orElse(List.of())));
    return spots.isEmpty() ? EnumSet.noneOf(Spot.class) : EnumSet.copyOf(spots);
  }
}

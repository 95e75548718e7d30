package counterset.figure;

import counterset.model.Figure;
import counterset.model.Figure.Prop;
import counterset.model.Figure.Thing;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the body of a figure touches: the floor, or one of its things, each of which stands where
 * the body first touches it.
 */
final class Scene {

  private final Figure figure;
  private final Map<Spot, Prop> props = new EnumMap<>(Spot.class);
  private final Map<Prop, Surface> walls = new LinkedHashMap<>();

  Scene(Figure figure) {
    this.figure = figure;
    for (Prop prop : figure.props()) {
      for (String name : prop.at()) {
        Spot.named(name).orElse(List.of()).forEach(spot -> props.put(spot, prop));
      }
    }
  }

  /**
   * What a point touches.
   *
   * @param body as it is when it first touches it
   */
  Surface under(Spot spot, Body body) {
    Prop prop = props.get(spot);
    if (prop == null) {
      return Surface.FLOOR;
    }
    return switch (prop.thing()) {
      case WALL -> wall(prop, body);
      case BAR -> Surface.level(Things.BAR_HEIGHT - spot.radius());
      default -> Surface.level(Things.height(prop));
    };
  }

  /** The face of a wall, once the body has touched it. */
  Optional<Surface> wall(Prop prop) {
    return Optional.ofNullable(walls.get(prop));
  }

  private Surface wall(Prop prop, Body body) {
    return walls.computeIfAbsent(
        prop,
        key -> {
          Vec normal = Things.away(prop.where()).times(-1);
          List<Spot> spots = spots(prop);
          double sum = 0;
          for (Spot spot : spots) {
            sum += new Surface(normal, 0).gap(spot, body.at(spot));
          }
          return new Surface(normal, sum / spots.size());
        });
  }

  /** Whether a ball is held between the body and a wall. */
  boolean isBehindBall(Prop wall) {
    return figure.props().stream()
        .anyMatch(prop -> prop.thing() == Thing.BALL && spots(prop).equals(spots(wall)));
  }

  /** The points of the body that a thing carries. */
  static List<Spot> spots(Prop prop) {
    return prop.at().stream()
        .flatMap(name -> Spot.named(name).orElse(List.of()).stream())
        .distinct()
        .toList();
  }

  /** Whether a thing goes along with the body. */
  static boolean isCarriedAlong(Prop prop) {
    return prop.thing() == Thing.BALL || prop.thing() == Thing.SLIDER;
  }
}

package counterset.catalogue;

import static counterset.catalogue.Elements.constant;
import static counterset.catalogue.Elements.text;

import counterset.json.Cursor;
import counterset.model.Angle;
import counterset.model.Figure;
import counterset.model.Pose;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Builds a figure from an element that fits its schema. */
final class FigureElement {

  private FigureElement() {}

  static Figure read(Cursor at) {
    List<String> stands = at.field("stands").texts();
    List<String> slides = at.field("slides").texts();
    return new Figure(
        text(at, "id"),
        constant(at, "view", Figure.View.class),
        at.field("props").elements().stream().map(FigureElement::prop).toList(),
        at.field("load").text(),
        at.field("loop").text(),
        at.field("bands").elements().stream().map(Cursor::texts).toList(),
        at.field("poses").elements().stream().map(pose -> pose(pose, stands, slides)).toList());
  }

  private static Figure.Prop prop(Cursor at) {
    return new Figure.Prop(
        constant(at, "thing", Figure.Thing.class),
        at.field("at").texts(),
        constant(at, "where", Figure.Where.class),
        at.field("height").number().orElse(0.0));
  }

  /** A pose; what it stands on unless it says so itself is given. */
  private static Pose pose(Cursor at, List<String> stands, List<String> slides) {
    Map<Angle, Double> angles = new EnumMap<>(Angle.class);
    for (Angle angle : Angle.values()) {
      angle
          .bothSidesKey()
          .flatMap(key -> at.field(key).number())
          .ifPresent(degrees -> angles.put(angle, degrees));
      at.field(angle.key()).number().ifPresent(degrees -> angles.put(angle, degrees));
    }
    return new Pose(
        angles,
        at.field("stands").isPresent() ? at.field("stands").texts() : stands,
        at.field("slides").isPresent() ? at.field("slides").texts() : slides,
        at.field("lift").number().orElse(0.0));
  }
}

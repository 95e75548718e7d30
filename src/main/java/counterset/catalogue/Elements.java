package counterset.catalogue;

import counterset.json.Cursor;
import counterset.model.Aspect;
import counterset.model.Equipment;
import counterset.model.EquipmentKind;
import counterset.model.Identified;
import counterset.model.Joint;
import counterset.model.Limitation;
import counterset.model.Muscle;
import counterset.model.Position;
import counterset.model.Region;
import counterset.model.Rule;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** Builds the small values of a catalogue from elements that fit their schema. */
final class Elements {

  private Elements() {}

  static Muscle muscle(Cursor at) {
    return new Muscle(
        text(at, "id"),
        text(at, "name"),
        constant(at, "region", Region.class),
        constant(at, "aspect", Aspect.class),
        set(at, "opposes"),
        at.field("defaultTarget").bool().orElse(true),
        at.field("names").texts());
  }

  static Equipment equipment(Cursor at) {
    return new Equipment(
        text(at, "id"),
        text(at, "name"),
        constant(at, "kind", EquipmentKind.class),
        integer(at, "putOnSeconds"),
        integer(at, "takeOffSeconds"),
        at.field("support").bool().orElse(false),
        positions(at.field("comfortIn")),
        at.field("names").texts());
  }

  static Limitation limitation(Cursor at) {
    return Limitation.builder()
        .id(text(at, "id"))
        .name(text(at, "name"))
        .names(at.field("names").texts())
        .maxDemand(demand(at.field("maxDemand")))
        .avoidTraits(set(at, "avoidTraits"))
        .avoidPositions(positions(at.field("avoidPositions")))
        .favours(set(at, "favours"))
        .caution(text(at, "caution"))
        .source(text(at, "source"))
        .rules(at.field("rules").elements().stream().map(Elements::rule).toList())
        .build();
  }

  private static Rule rule(Cursor at) {
    return new Rule(
        text(at, "rule"), text(at, "source"), constant(at, "status", Rule.Status.class));
  }

  static String trait(Cursor at) {
    return text(at, "id");
  }

  static String text(Cursor at, String field) {
    return at.field(field).text().orElse("");
  }

  static int integer(Cursor at, String field) {
    return at.field(field).integer().orElse(0);
  }

  static Set<String> set(Cursor at, String field) {
    return new LinkedHashSet<>(at.field(field).texts());
  }

  static <E extends Enum<E> & Identified> E constant(Cursor at, String field, Class<E> type) {
    return at.field(field).constant(type).orElse(type.getEnumConstants()[0]);
  }

  /** In the order of the joints, whatever the order of the file. */
  static Map<Joint, Integer> demand(Cursor at) {
    Map<Joint, Integer> demand = new EnumMap<>(Joint.class);
    for (Joint joint : Joint.values()) {
      at.field(joint.id()).integer().ifPresent(number -> demand.put(joint, number));
    }
    return demand;
  }

  private static Set<Position> positions(Cursor at) {
    Set<Position> positions = new LinkedHashSet<>();
    at.elements().forEach(element -> element.constant(Position.class).ifPresent(positions::add));
    return positions;
  }
}

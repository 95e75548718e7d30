package counterset.score;

import com.fasterxml.jackson.databind.JsonNode;
import counterset.model.Aspect;
import counterset.model.Catalogue;
import counterset.model.Equipment;
import counterset.model.EquipmentKind;
import counterset.model.Exercise;
import counterset.model.Joint;
import counterset.model.Limitation;
import counterset.model.Load;
import counterset.model.Met;
import counterset.model.Muscle;
import counterset.model.Need;
import counterset.model.Part;
import counterset.model.Position;
import counterset.model.Region;
import counterset.model.Sides;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;

/**
 * Reads what scoring needs of a catalogue as it once was: changes of the present one leave the
 * record alone. Names, cues and sources are not kept; constants go by their names in Java.
 */
final class FrozenCatalogue {

  private FrozenCatalogue() {}

  static Catalogue read(JsonNode tree) {
    return Catalogue.of(
        list(tree.get("muscles"), FrozenCatalogue::muscle),
        list(tree.get("equipment"), FrozenCatalogue::equipment),
        list(tree.get("limitations"), FrozenCatalogue::limitation),
        list(tree.get("exercises"), FrozenCatalogue::exercise));
  }

  private static Muscle muscle(JsonNode at) {
    return new Muscle(
        text(at, "id"),
        text(at, "id"),
        constant(Region.class, at.get("region")),
        constant(Aspect.class, at.get("aspect")),
        texts(at.get("opposes")),
        at.get("defaultTarget").booleanValue(),
        List.of());
  }

  private static Equipment equipment(JsonNode at) {
    return new Equipment(
        text(at, "id"),
        text(at, "id"),
        constant(EquipmentKind.class, at.get("kind")),
        at.get("putOnSeconds").intValue(),
        at.get("takeOffSeconds").intValue(),
        at.get("support").booleanValue(),
        positions(at.get("comfortIn")),
        List.of());
  }

  private static Limitation limitation(JsonNode at) {
    return new Limitation(
        text(at, "id"),
        text(at, "id"),
        List.of(),
        joints(at.get("maxDemand")),
        texts(at.get("avoidTraits")),
        positions(at.get("avoidPositions")),
        "",
        "",
        List.of());
  }

  private static Exercise exercise(JsonNode at) {
    return new Exercise(
        text(at, "id"),
        text(at, "id"),
        List.of(),
        constant(Part.class, at.get("part")),
        text(at, "pattern"),
        text(at, "family"),
        Optional.ofNullable(at.get("variantOf")).map(JsonNode::textValue),
        at.get("multiJoint").booleanValue(),
        at.get("intensity").intValue(),
        at.get("level").intValue(),
        texts(at.get("primary")),
        texts(at.get("secondary")),
        constant(Sides.class, at.get("sides")),
        constant(Position.class, at.get("position")),
        list(at.get("needs"), FrozenCatalogue::need),
        texts(at.get("allowsWorn")),
        joints(at.get("demand")),
        "",
        texts(at.get("traits")),
        new Met("", 0, 0),
        OptionalInt.empty(),
        "",
        List.of(),
        List.of(),
        Optional.empty());
  }

  private static Need need(JsonNode at) {
    return new Need(
        text(at, "equipment"),
        at.get("count").intValue(),
        Optional.ofNullable(at.get("load")).map(load -> constant(Load.class, load)));
  }

  private static Map<Joint, Integer> joints(JsonNode at) {
    Map<Joint, Integer> joints = new LinkedHashMap<>();
    at.properties()
        .forEach(entry -> joints.put(Joint.valueOf(entry.getKey()), entry.getValue().intValue()));
    return joints;
  }

  private static Set<Position> positions(JsonNode at) {
    return new LinkedHashSet<>(list(at, each -> constant(Position.class, each)));
  }

  private static Set<String> texts(JsonNode at) {
    return new LinkedHashSet<>(list(at, JsonNode::textValue));
  }

  private static String text(JsonNode at, String field) {
    return at.get(field).textValue();
  }

  private static <E extends Enum<E>> E constant(Class<E> type, JsonNode at) {
    return Enum.valueOf(type, at.textValue());
  }

  private static <T> List<T> list(JsonNode at, Function<JsonNode, T> each) {
    List<T> all = new ArrayList<>();
    at.forEach(element -> all.add(each.apply(element)));
    return all;
  }
}

package counterset.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import counterset.model.Exercise;
import java.util.List;

/** Writes exercises as the catalogue's files have them. */
public final class CatalogueJson {

  private CatalogueJson() {}

  /** Several exercises, as a list. */
  public static String list(List<Exercise> exercises) {
    ArrayNode array = Json.array();
    exercises.forEach(exercise -> array.add(write(exercise)));
    return Json.pretty(array);
  }

  /** One exercise. */
  public static String exercise(Exercise exercise) {
    return Json.pretty(write(exercise));
  }

  private static ObjectNode write(Exercise exercise) {
    ObjectNode json = Json.object().put("id", exercise.id()).put("name", exercise.name());
    if (!exercise.names().isEmpty()) {
      json.set("names", Nodes.texts(exercise.names()));
    }
    json.put("part", exercise.part().id())
        .put("pattern", exercise.pattern())
        .put("family", exercise.family())
        .put("movement", exercise.family());
    exercise.variantOf().ifPresent(base -> json.put("variantOf", base));
    json.put("multiJoint", exercise.multiJoint())
        .put("intensity", exercise.intensity())
        .put("level", exercise.level())
        .put("standing", exercise.standing());
    json.set("standingSources", Nodes.texts(exercise.standingSources()));
    json.set("primary", Nodes.texts(List.copyOf(exercise.primary())));
    json.set("secondary", Nodes.texts(List.copyOf(exercise.secondary())));
    json.put("sides", exercise.sides().id()).put("position", exercise.position().id());
    json.set(
        "needs",
        Nodes.objects(
            exercise.needs(),
            (need, node) -> {
              node.put("equipment", need.equipment()).put("count", need.count());
              need.load().ifPresent(load -> node.put("load", load.id()));
            }));
    json.set("allowsWorn", Nodes.texts(List.copyOf(exercise.allowsWorn())));
    ObjectNode demand = json.putObject("demand");
    exercise.demand().forEach((joint, rating) -> demand.put(joint.id(), rating));
    json.put("demandSource", exercise.demandSource());
    json.set("traits", Nodes.texts(List.copyOf(exercise.traits())));
    ObjectNode met = json.putObject("met");
    met.put("code", exercise.met().code())
        .put("edition", exercise.met().edition())
        .put("value", exercise.met().value());
    exercise.seconds().ifPresent(seconds -> json.put("seconds", seconds));
    json.put("setup", exercise.setup());
    json.set("cues", Nodes.texts(exercise.cues()));
    json.set("faults", Nodes.texts(exercise.faults()));
    return json;
  }
}

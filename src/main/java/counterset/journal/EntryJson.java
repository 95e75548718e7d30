package counterset.journal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import java.util.List;
import java.util.function.BiConsumer;

/** Writes entries. Reading the result gives an equal entry. */
public final class EntryJson {

  /** The version of the format of a line. */
  static final int VERSION = 1;

  private EntryJson() {}

  /** The tree of an entry; only note and mass may be absent. */
  public static ObjectNode write(Entry entry) {
    ObjectNode json =
        Json.object()
            .put("entry", VERSION)
            .put("date", entry.date().toString())
            .put("title", entry.title())
            .put("minutes", entry.minutes());
    put(json, "rpe", entry.rpe());
    entry.note().ifPresent(note -> json.put("note", note));
    entry.mass().ifPresent(mass -> put(json, "mass", mass));
    json.set(
        "exercises",
        objects(
            entry.exercises(),
            (done, object) -> object.put("exercise", done.exercise()).put("sets", done.sets())));
    json.set("loads", objects(entry.loads(), EntryJson::lift));
    json.set(
        "muscles",
        objects(
            entry.muscles(),
            (muscle, object) ->
                object
                    .put("muscle", muscle.muscle())
                    .put("direct", muscle.direct())
                    .put("indirect", muscle.indirect())));
    json.set("energy", objects(entry.energy(), EntryJson::block));
    return json;
  }

  private static void lift(Lift lift, ObjectNode object) {
    object.put("exercise", lift.exercise());
    put(object, "kg", lift.kg());
    object.put("reps", lift.reps()).put("set", lift.set());
  }

  private static void block(EnergyBlock block, ObjectNode object) {
    object.put("part", block.part()).put("seconds", block.seconds());
    put(object, "met", block.met());
    ArrayNode codes = object.putArray("codes");
    block.codes().forEach(codes::add);
  }

  private static void put(ObjectNode json, String name, double number) {
    if (number == Math.rint(number)) {
      json.put(name, (long) number);
    } else {
      json.put(name, number);
    }
  }

  private static <T> ArrayNode objects(List<T> values, BiConsumer<T, ObjectNode> write) {
    ArrayNode list = Json.array();
    values.forEach(value -> write.accept(value, list.addObject()));
    return list;
  }
}

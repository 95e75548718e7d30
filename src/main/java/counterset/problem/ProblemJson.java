package counterset.problem;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import counterset.model.Intervals;
import counterset.model.Owned;
import counterset.model.Problem;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;

/**
 * Writes problems with every field resolved, as plans echo them. Reading the result gives an equal
 * problem.
 */
public final class ProblemJson {

  /** The version of the problem format. */
  static final int VERSION = 1;

  private ProblemJson() {}

  /** All fields in the order of the contract; only {@code date} may be absent. */
  public static ObjectNode write(Problem problem) {
    ObjectNode json = Json.object();
    json.put("problem", VERSION).put("title", problem.title()).put("minutes", problem.minutes());
    json.set("clock", clock(problem.clock()));
    json.set(
        "targets",
        objects(
            problem.targets(),
            (target, object) ->
                object
                    .put("muscle", target.muscle())
                    .put("emphasis", target.emphasis())
                    .put("minSets", target.minSets())));
    json.set("equipment", objects(problem.equipment(), ProblemJson::owned));
    json.set("limitations", texts(problem.limitations()));
    json.set("tracks", tracks(problem.tracks()));
    json.put("level", problem.level()).put("pairing", problem.pairing().id());
    json.set("include", texts(problem.include()));
    json.set("exclude", texts(problem.exclude()));
    json.set(
        "keep",
        objects(
            problem.keep(),
            (keep, object) ->
                object.put("at", keep.at().toString()).put("exercise", keep.exercise())));
    json.set("likes", texts(problem.likes()));
    json.set("dislikes", texts(problem.dislikes()));
    json.set(
        "recent",
        objects(
            problem.recent(),
            (done, object) ->
                object
                    .put("date", done.date().toString())
                    .set("exercises", texts(done.exercises()))));
    problem.date().ifPresent(date -> json.put("date", date.toString()));
    ObjectNode weights = json.putObject("weights");
    problem.weights().forEach(weights::put);
    return json.put("seed", problem.seed());
  }

  private static ObjectNode clock(Intervals clock) {
    return Json.object()
        .put("getReady", clock.getReady())
        .put("warmUp", clock.warmUp())
        .put("work", clock.work())
        .put("switch", clock.between())
        .put("rest", clock.rest())
        .put("coolDown", clock.coolDown())
        .put("perSuperset", clock.perSuperset())
        .put("rounds", clock.rounds());
  }

  private static void owned(Owned owned, ObjectNode object) {
    object.put("id", owned.id()).put("count", owned.count());
    ArrayNode kg = object.putArray("kg");
    owned.kg().forEach(mass -> addNumber(kg, mass));
    object.set("loads", texts(owned.loads().stream().map(load -> load.id()).toList()));
  }

  private static void addNumber(ArrayNode list, double number) {
    if (number == Math.rint(number)) {
      list.add((long) number);
    } else {
      list.add(number);
    }
  }

  private static ArrayNode tracks(List<Set<String>> tracks) {
    ArrayNode list = Json.array();
    for (Set<String> track : tracks) {
      if (track.size() == 1) {
        list.add(track.iterator().next());
      } else {
        list.add(texts(track));
      }
    }
    return list;
  }

  private static ArrayNode texts(Collection<String> texts) {
    ArrayNode list = Json.array();
    texts.forEach(list::add);
    return list;
  }

  private static <T> ArrayNode objects(Collection<T> values, BiConsumer<T, ObjectNode> write) {
    ArrayNode list = Json.array();
    values.forEach(value -> write.accept(value, list.addObject()));
    return list;
  }
}

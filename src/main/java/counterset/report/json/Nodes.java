package counterset.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import java.util.List;
import java.util.function.BiConsumer;

/** Lists as JSON arrays. */
final class Nodes {

  private Nodes() {}

  static <T> ArrayNode objects(List<T> values, BiConsumer<T, ObjectNode> write) {
    ArrayNode array = Json.array();
    values.forEach(value -> write.accept(value, array.addObject()));
    return array;
  }

  static ArrayNode texts(List<String> texts) {
    ArrayNode array = Json.array();
    texts.forEach(array::add);
    return array;
  }

  static ArrayNode numbers(List<Integer> numbers) {
    ArrayNode array = Json.array();
    numbers.forEach(number -> array.add(number.intValue()));
    return array;
  }

  /** A number, without a fraction if it is whole. */
  static void put(ObjectNode json, String name, double number) {
    if (number == Math.rint(number)) {
      json.put(name, (long) number);
    } else {
      json.put(name, number);
    }
  }
}

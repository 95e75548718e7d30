package counterset.catalogue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;

/** Writes where a catalogue is empty or thin. */
public final class GapsJson {

  private GapsJson() {}

  /** The combinations without any exercise, and those with too few. */
  public static String text(Gaps gaps) {
    ObjectNode json = Json.object().put("combinations", gaps.cells().size());
    ArrayNode empty = json.putArray("empty");
    gaps.empty().forEach(cell -> write(cell, empty.addObject()));
    ArrayNode thin = json.putArray("thin");
    gaps.thin().forEach(cell -> write(cell, thin.addObject()));
    return Json.pretty(json);
  }

  /** The home equipment, and where a limitation or a pair of them leaves too few exercises. */
  public static String text(LimitationGaps gaps) {
    ObjectNode json = Json.object().put("combinations", gaps.cells().size());
    json.put("enoughForOne", LimitationGaps.ENOUGH_FOR_ONE);
    json.put("enoughForTwo", LimitationGaps.ENOUGH_FOR_TWO);
    ArrayNode equipment = json.putArray("equipment");
    HomeEquipment.IDS.forEach(equipment::add);
    ArrayNode missing = json.putArray("missing");
    for (LimitationGaps.Cell cell : gaps.missing()) {
      ObjectNode entry = missing.addObject();
      ArrayNode limitations = entry.putArray("limitations");
      cell.limitations().forEach(limitations::add);
      entry.put("muscle", cell.muscle());
      entry.put("count", cell.count());
    }
    return Json.pretty(json);
  }

  private static void write(Gaps.Cell cell, ObjectNode json) {
    json.put("muscle", cell.muscle());
    cell.equipment().ifPresent(equipment -> json.put("equipment", equipment));
    cell.limitation().ifPresent(limitation -> json.put("limitation", limitation));
    json.put("count", cell.count());
  }
}

package counterset.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.batch.FinishedJson;
import counterset.batch.Outcome;
import counterset.batch.Status;
import counterset.json.Json;
import java.util.List;

/** Writes what came of the files of a folder. */
public final class BatchJson {

  private BatchJson() {}

  /** All outcomes in the order of the folder, and how many there are of each kind. */
  public static String text(List<Outcome> outcomes) {
    ObjectNode json = Json.object().put("batch", 1);
    ArrayNode files = json.putArray("files");
    outcomes.forEach(outcome -> files.add(FinishedJson.write(outcome)));
    ObjectNode totals = json.putObject("totals");
    for (Status status : Status.values()) {
      totals.put(status.id(), outcomes.stream().filter(it -> it.status() == status).count());
    }
    return Json.pretty(json);
  }
}

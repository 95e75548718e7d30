package counterset.report.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import counterset.json.Violation;
import counterset.model.Plan;
import java.util.List;

/** Writes what was found out about a plan. */
public final class CheckJson {

  private CheckJson() {}

  /**
   * The verdict and the score of a plan.
   *
   * @param feasible whether it keeps every rule
   * @param faults every broken rule, a sentence each
   * @param wishes every unmet wish, a sentence each
   * @param differences what the file says otherwise than its session works out to
   */
  public static String text(
      Plan plan,
      boolean feasible,
      List<String> faults,
      List<String> wishes,
      List<Violation> differences) {
    ObjectNode json = Json.object().put("feasible", feasible);
    json.set("faults", Nodes.texts(faults));
    json.set("wishes", Nodes.texts(wishes));
    json.set(
        "differences",
        Nodes.objects(
            differences,
            (difference, node) -> {
              node.put("pointer", difference.pointer());
              difference.line().ifPresent(line -> node.put("line", line));
              node.put("message", difference.message());
            }));
    json.set("score", ScoreJson.write(plan.score()));
    return Json.pretty(json);
  }
}

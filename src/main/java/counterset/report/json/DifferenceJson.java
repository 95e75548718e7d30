package counterset.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.explain.Difference;
import counterset.json.Json;
import counterset.model.At;
import counterset.model.PlanScore;
import java.util.List;

/** What differs between two plans, wherever it is told. */
final class DifferenceJson {

  private DifferenceJson() {}

  /** One difference. */
  static void write(Difference difference, ObjectNode json) {
    json.put("constraint", difference.constraint())
        .put("level", difference.level())
        .put("points", difference.points());
    json.set("places", places(difference.places()));
    json.put("sentence", difference.sentence());
  }

  /** Places as a coach writes them. */
  static ArrayNode places(List<At> places) {
    return Nodes.texts(places.stream().map(At::toString).toList());
  }

  /** What a score has more than so many points of each level. */
  static ObjectNode points(PlanScore score, int hard, int medium, int soft) {
    return Json.object()
        .put("hard", score.hard() - hard)
        .put("medium", score.medium() - medium)
        .put("soft", score.soft() - soft);
  }
}

package counterset.report.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import counterset.model.Bound;
import counterset.model.PlanScore;
import counterset.model.SolverNote;
import counterset.model.Totals;

/** The figures of a plan. */
final class ScoreJson {

  private ScoreJson() {}

  static ObjectNode write(PlanScore score) {
    ObjectNode json =
        Json.object()
            .put("hard", score.hard())
            .put("medium", score.medium())
            .put("soft", score.soft())
            .put("feasible", score.feasible());
    json.set("constraints", Nodes.objects(score.lines(), ScoreJson::line));
    return json;
  }

  private static void line(PlanScore.Line line, ObjectNode json) {
    json.put("id", line.id())
        .put("level", line.level())
        .put("weight", line.weight())
        .put("matches", line.matches())
        .put("score", line.score());
  }

  static ObjectNode bound(Bound bound, PlanScore score) {
    return Json.object().put("soft", bound.soft()).put("gap", bound.soft() - score.soft());
  }

  static ObjectNode totals(Totals totals) {
    return Json.object()
        .put("seconds", totals.seconds())
        .put("unusedSeconds", totals.unusedSeconds())
        .put("workSeconds", totals.workSeconds())
        .put("restSeconds", totals.restSeconds())
        .put("supersets", totals.supersets())
        .put("exercises", totals.exercises())
        .put("positions", totals.positions())
        .put("loadedPositions", totals.loadedPositions())
        .put("itemsHandled", totals.itemsHandled())
        .put("changeoverSeconds", totals.changeoverSeconds())
        .put("floorTrips", totals.floorTrips());
  }

  static ObjectNode solver(SolverNote note) {
    return Json.object()
        .put("seed", note.seed())
        .put("effort", note.effort())
        .put("version", note.version())
        .put("moves", note.moves())
        .put("complete", note.complete());
  }
}

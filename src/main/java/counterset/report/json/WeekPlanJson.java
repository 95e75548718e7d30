package counterset.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import counterset.model.Catalogue;
import counterset.model.WeekPlan;
import counterset.model.WeekPlan.WeekMatch;
import counterset.model.WeekPlan.WeekSets;
import counterset.problem.WeekJson;
import counterset.training.LoadAdvice;
import java.util.List;

/** Writes planned weeks. Reading the result gives the same sessions. */
public final class WeekPlanJson {

  private WeekPlanJson() {}

  /**
   * The text of a week on several lines.
   *
   * @param loads advice on loads by session; empty if no journal was read
   */
  public static String text(WeekPlan week, Catalogue catalogue, List<List<LoadAdvice>> loads) {
    return Json.pretty(write(week, catalogue, loads));
  }

  /** The text of several weeks, one after the other. */
  public static String block(List<WeekPlan> weeks, Catalogue catalogue) {
    ObjectNode json = Json.object().put("block", 1);
    ArrayNode list = json.putArray("weeks");
    weeks.forEach(week -> list.add(write(week, catalogue, List.of())));
    return Json.pretty(json);
  }

  private static ObjectNode write(
      WeekPlan week, Catalogue catalogue, List<List<LoadAdvice>> loads) {
    ObjectNode json = Json.object().put("week", 1);
    json.set("problem", WeekJson.write(week.problem()));
    json.set("score", ScoreJson.write(week.score()));
    ArrayNode sessions = json.putArray("sessions");
    for (int i = 0; i < week.plans().size(); i++) {
      ObjectNode plan = PlanJson.write(week.plans().get(i), catalogue);
      if (!loads.isEmpty() && !loads.get(i).isEmpty()) {
        LoadJson.add(plan, loads.get(i));
      }
      sessions.addObject().put("day", day(week, i)).set("plan", plan);
    }
    json.set("sets", Nodes.objects(week.sets(), WeekPlanJson::sets));
    ArrayNode matches = json.putArray("matches");
    week.matches().forEach(match -> match(week, match, matches.addObject()));
    json.set("solver", ScoreJson.solver(week.solver()));
    return json;
  }

  private static void sets(WeekSets sets, ObjectNode json) {
    json.put("muscle", sets.muscle());
    ArrayNode byDay = json.putArray("byDay");
    sets.halfSetsByDay().forEach(half -> byDay.add(half / 2.0));
    json.put("sets", sets.halfSets() / 2.0)
        .put("days", sets.days())
        .put("least", sets.range().least())
        .put("most", sets.range().most());
  }

  private static void match(WeekPlan week, WeekMatch match, ObjectNode json) {
    json.put("constraint", match.constraint())
        .put("amount", match.amount())
        .put("points", match.points());
    json.set(
        "days",
        Nodes.texts(match.sessions().stream().map(i -> i < 0 ? "before" : day(week, i)).toList()));
    json.put("subject", match.subject());
  }

  private static String day(WeekPlan week, int session) {
    return WeekJson.id(week.problem().sessions().get(session).day());
  }
}

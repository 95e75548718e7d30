package counterset.report.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import counterset.model.PlanScore;
import counterset.report.SwapChoice;
import counterset.report.SwapList;

/** Writes what could stand at a place of a plan. */
public final class SwapJson {

  private final PlanScore before;

  private SwapJson(PlanScore before) {
    this.before = before;
  }

  /** A list of replacements, as the schema {@code swap} describes it. */
  public static String text(SwapList list) {
    SwapJson json = new SwapJson(list.plan().score());
    ObjectNode object = Json.object().put("swap", 1).put("at", list.at().toString());
    list.standing().ifPresent(exercise -> object.put("standing", exercise.id()));
    object.set("score", DifferenceJson.points(json.before, 0, 0, 0));
    object.put("replacementsInAll", list.choicesInAll());
    object.set("replacements", Nodes.objects(list.choices(), json::choice));
    object.put("breakingInAll", list.breakingInAll());
    object.set("breaking", Nodes.objects(list.breaking(), json::choice));
    return Json.pretty(object);
  }

  private void choice(SwapChoice choice, ObjectNode json) {
    choice.number().ifPresent(number -> json.put("number", number));
    json.put("exercise", choice.exercise().id()).put("name", choice.exercise().name());
    json.set("places", DifferenceJson.places(choice.places()));
    choice.partner().ifPresent(partner -> json.put("partner", partner.id()));
    json.set("score", DifferenceJson.points(choice.score(), 0, 0, 0));
    json.set(
        "change",
        DifferenceJson.points(choice.score(), before.hard(), before.medium(), before.soft()));
    json.set("differences", Nodes.objects(choice.differences(), DifferenceJson::write));
    json.set("follows", Nodes.texts(choice.follows()));
  }
}

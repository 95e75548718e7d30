package counterset.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.explain.Difference;
import counterset.json.Json;
import counterset.model.At;
import counterset.model.PlanScore;
import counterset.report.SwapChoice;
import counterset.report.SwapList;
import java.util.List;

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
    object.set("score", points(json.before, 0, 0, 0));
    object.put("replacementsInAll", list.choicesInAll());
    object.set("replacements", Nodes.objects(list.choices(), json::choice));
    object.put("breakingInAll", list.breakingInAll());
    object.set("breaking", Nodes.objects(list.breaking(), json::choice));
    return Json.pretty(object);
  }

  private void choice(SwapChoice choice, ObjectNode json) {
    choice.number().ifPresent(number -> json.put("number", number));
    json.put("exercise", choice.exercise().id()).put("name", choice.exercise().name());
    json.set("places", places(choice.places()));
    choice.partner().ifPresent(partner -> json.put("partner", partner.id()));
    json.set("score", points(choice.score(), 0, 0, 0));
    json.set("change", points(choice.score(), before.hard(), before.medium(), before.soft()));
    json.set("differences", Nodes.objects(choice.differences(), SwapJson::difference));
    json.set("follows", Nodes.texts(choice.follows()));
  }

  private static void difference(Difference difference, ObjectNode json) {
    json.put("constraint", difference.constraint())
        .put("level", difference.level())
        .put("points", difference.points());
    json.set("places", places(difference.places()));
    json.put("sentence", difference.sentence());
  }

  private static ArrayNode places(List<At> places) {
    return Nodes.texts(places.stream().map(At::toString).toList());
  }

  private static ObjectNode points(PlanScore score, int hard, int medium, int soft) {
    return Json.object()
        .put("hard", score.hard() - hard)
        .put("medium", score.medium() - medium)
        .put("soft", score.soft() - soft);
  }
}

package counterset.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.json.Json;
import counterset.model.Catalogue;
import counterset.model.Plan;
import counterset.training.Lifted;
import counterset.training.LoadAdvice;
import counterset.training.OneRepMax;
import java.util.List;

/** Load advice beside a plan. */
public final class LoadJson {

  private LoadJson() {}

  /** The text of a plan with a list of load advice as its last property. */
  public static String plan(Plan plan, Catalogue catalogue, List<LoadAdvice> loads) {
    ObjectNode json = PlanJson.write(plan, catalogue);
    add(json, loads);
    return Json.pretty(json);
  }

  /** Adds the list to the tree of a plan. */
  static void add(ObjectNode plan, List<LoadAdvice> loads) {
    plan.set("loads", Nodes.objects(loads, LoadJson::advice));
  }

  private static void advice(LoadAdvice advice, ObjectNode json) {
    json.put("exercise", advice.exercise());
    advice.last().ifPresent(last -> last(last, json.putObject("last")));
    advice.oneRepMax().ifPresent(max -> max(max, json.putObject("oneRepMax")));
    json.put("step", advice.step().id());
    if (advice.kg().isPresent()) {
      Nodes.put(json, "kg", advice.kg().getAsDouble());
    }
    json.put("say", advice.say());
  }

  private static void last(Lifted last, ObjectNode json) {
    json.put("date", last.date().toString());
    Nodes.put(json, "kg", last.kg());
    ArrayNode reps = json.putArray("reps");
    last.reps().forEach(reps::add);
  }

  private static void max(OneRepMax max, ObjectNode json) {
    LogJson.put(json, "epley", max.epley());
    LogJson.put(json, "brzycki", max.brzycki());
  }
}

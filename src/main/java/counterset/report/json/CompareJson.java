package counterset.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.compare.Compared;
import counterset.compare.Comparison;
import counterset.compare.ConstraintRow;
import counterset.compare.Facts;
import counterset.compare.Shared;
import counterset.compare.TradeOff;
import counterset.compare.Verdict;
import counterset.json.Json;
import counterset.model.Catalogue;
import counterset.model.Superset;

/** Writes a comparison. */
public final class CompareJson {

  private CompareJson() {}

  /** All of it; the plans themselves in brief. */
  public static String text(Comparison comparison, Catalogue catalogue) {
    ObjectNode json =
        Json.object()
            .put("comparison", 1)
            .put("title", comparison.title())
            .put("sameProblem", comparison.sameProblem());
    json.set("options", Nodes.objects(comparison.all(), CompareJson::option));
    ArrayNode ranked = json.putArray("ranked");
    comparison.ranked().forEach(it -> ranked.add(it.number()));
    json.set("verdict", Nodes.texts(Verdict.of(comparison, catalogue)));
    json.put("pointsPerSuperset", !comparison.sameShape());
    json.set("constraints", Nodes.objects(ConstraintRow.of(comparison), CompareJson::constraint));
    json.set("tradeOffs", Nodes.objects(TradeOff.of(comparison), CompareJson::tradeOff));
    json.set("shared", Nodes.objects(Shared.of(comparison), CompareJson::shared));
    return Json.pretty(json);
  }

  private static void option(Compared it, ObjectNode json) {
    json.put("number", it.number()).put("label", it.label()).put("feasible", it.feasible());
    json.set("reasons", Nodes.texts(it.reasons()));
    json.set("wishes", Nodes.texts(it.wishes()));
    json.set("figures", figures(it.facts()));
    json.set("supersets", Nodes.objects(it.plan().session().supersets(), CompareJson::superset));
    json.set("solver", ScoreJson.solver(it.plan().solver()));
  }

  private static ObjectNode figures(Facts facts) {
    return Json.object()
        .put("brokenRules", facts.brokenRules())
        .put("unmetWishes", facts.unmetWishes())
        .put("hard", facts.hard())
        .put("medium", facts.medium())
        .put("soft", facts.points())
        .put("softPerSuperset", facts.pointsPerSuperset())
        .put("supersets", facts.supersets())
        .put("minutes", facts.minutes())
        .put("seconds", facts.seconds())
        .put("thingsToFetch", facts.fetched())
        .put("itemsHandled", facts.handled())
        .put("changeoverSeconds", facts.changeover())
        .put("positions", facts.positions())
        .put("loadedPositions", facts.loaded())
        .put("floorTrips", facts.floorTrips())
        .put("targets", facts.targets())
        .put("targetsCovered", facts.covered());
  }

  private static void superset(Superset superset, ObjectNode json) {
    json.put("number", superset.number());
    json.set("exercises", Nodes.texts(superset.exercises().stream().map(it -> it.id()).toList()));
  }

  private static void constraint(ConstraintRow row, ObjectNode json) {
    json.put("id", row.id()).put("level", row.level()).put("topic", row.topic());
    json.put("equal", row.isEqual());
    json.set("points", Nodes.numbers(row.points()));
    ArrayNode compared = json.putArray("compared");
    row.values()
        .forEach(
            value -> {
              if (value.isPresent()) {
                compared.add(value.getAsDouble());
              } else {
                compared.addNull();
              }
            });
  }

  private static void tradeOff(TradeOff tradeOff, ObjectNode json) {
    json.put("less", tradeOff.across().id()).put("more", tradeOff.up().id());
    json.set("points", Nodes.objects(tradeOff.points(), CompareJson::point));
  }

  private static void point(TradeOff.Point point, ObjectNode json) {
    json.put("option", point.plan().number());
    Nodes.put(json, "less", point.across());
    Nodes.put(json, "more", point.up());
    json.put("onFront", point.onFront());
    json.set("beatenBy", Nodes.numbers(point.beatenBy()));
  }

  private static void shared(Shared pair, ObjectNode json) {
    json.put("one", pair.one()).put("other", pair.other());
    json.put("exercises", pair.exercises());
    json.put("ofOne", pair.ofOne()).put("ofOther", pair.ofOther());
  }
}

package counterset.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.explain.Announcement;
import counterset.explain.Announcements;
import counterset.explain.ItemWords;
import counterset.explain.Reasons;
import counterset.json.Json;
import counterset.model.Catalogue;
import counterset.model.Changeover;
import counterset.model.Exercise;
import counterset.model.Fetch;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.model.TargetCoverage;
import counterset.problem.PlanFileReader;
import counterset.problem.ProblemJson;

/** Writes plans. Reading the result gives the same session. */
public final class PlanJson {

  private final Plan plan;
  private final Catalogue catalogue;
  private final TrackJson tracks;

  PlanJson(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.catalogue = catalogue;
    this.tracks = new TrackJson(plan, catalogue);
  }

  /** The tree of a plan. */
  public static ObjectNode write(Plan plan, Catalogue catalogue) {
    return new PlanJson(plan, catalogue).write();
  }

  /** The text of a plan on several lines. */
  public static String text(Plan plan, Catalogue catalogue) {
    return Json.pretty(write(plan, catalogue));
  }

  private ObjectNode write() {
    ObjectNode json = Json.object().put("plan", PlanFileReader.VERSION);
    json.set("problem", ProblemJson.write(plan.problem()));
    json.set("score", ScoreJson.write(plan.score()));
    plan.bound().ifPresent(bound -> json.set("bound", ScoreJson.bound(bound, plan.score())));
    json.set("timeline", Nodes.objects(Announcements.of(plan, catalogue), this::interval));
    json.set("supersets", Nodes.objects(plan.session().supersets(), this::superset));
    json.set("coverage", coverage());
    json.set("changeovers", changeovers());
    json.set("tracks", tracks.tracks());
    json.set("equipmentList", equipmentList());
    json.set("totals", ScoreJson.totals(plan.totals()));
    json.set("cautions", Nodes.texts(plan.cautions()));
    json.set("solver", ScoreJson.solver(plan.solver()));
    return json;
  }

  ArrayNode coverage() {
    return Nodes.objects(plan.coverage(), PlanJson::coverage);
  }

  ArrayNode changeovers() {
    return Nodes.objects(plan.changeovers(), this::changeover);
  }

  ArrayNode equipmentList() {
    return Nodes.objects(plan.fetch(), this::fetch);
  }

  private void interval(Announcement announcement, ObjectNode json) {
    TrackJson.interval(announcement.interval(), json);
    json.put("say", announcement.text());
    tracks.beside(announcement.interval(), json);
  }

  private void superset(Superset superset, ObjectNode json) {
    int index = plan.session().supersets().indexOf(superset);
    json.put("number", superset.number()).put("kind", plan.kinds().get(index).id());
    json.set("exercises", Nodes.texts(superset.exercises().stream().map(Exercise::id).toList()));
    json.set("equipment", Nodes.objects(ItemJson.of(superset, catalogue), ItemJson::write));
    json.set("why", Nodes.texts(new Reasons(plan, catalogue).of(superset)));
  }

  private static void coverage(TargetCoverage target, ObjectNode json) {
    json.put("muscle", target.muscle())
        .put("direct", target.direct())
        .put("indirect", target.indirect())
        .put("sets", target.sets())
        .put("minSets", target.minSets());
  }

  private void changeover(Changeover changeover, ObjectNode json) {
    json.set("after", TrackJson.at(changeover.after()));
    if (plan.problem().clock().rounds() > 1) {
      json.put("round", changeover.round());
    }
    json.put("seconds", changeover.seconds()).put("available", changeover.available());
    json.set("takeOff", Nodes.objects(changeover.takeOff(), ItemJson::write));
    json.set("putOn", Nodes.objects(changeover.putOn(), ItemJson::write));
    json.put("position", changeover.to().position().id());
  }

  private void fetch(Fetch fetch, ObjectNode json) {
    ItemJson.write(fetch.item(), json);
    new ItemWords(plan.problem()).kg(fetch.item()).ifPresent(kg -> Nodes.put(json, "kg", kg));
    json.set("supersets", Nodes.numbers(fetch.supersets()));
    json.put("atStart", fetch.atStart());
  }
}

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
import counterset.model.IntervalKind;
import counterset.model.Plan;
import counterset.model.Superset;
import counterset.model.TargetCoverage;
import counterset.problem.PlanFileReader;
import counterset.problem.ProblemJson;
import counterset.score.WorkDone;

/** Writes plans. Reading the result gives the same session. */
public final class PlanJson {

  private final Plan plan;
  private final Catalogue catalogue;
  private final TrackJson tracks;
  private final WorkDone done;

  PlanJson(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.catalogue = catalogue;
    this.tracks = new TrackJson(plan, catalogue);
    this.done = WorkDone.of(plan.problem(), catalogue, plan.session());
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
    json.set("patterns", Nodes.objects(done.patterns(), PlanJson::pattern));
    json.set("changeovers", changeovers());
    json.set("tracks", tracks.tracks());
    json.set("equipmentList", equipmentList());
    json.set("totals", ScoreJson.totals(plan.totals()));
    json.set("cautions", Nodes.texts(plan.cautions()));
    json.set("solver", ScoreJson.solver(plan.solver()));
    return json;
  }

  ArrayNode coverage() {
    return Nodes.objects(plan.coverage(), this::coverage);
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
    if (announcement.interval().kind() == IntervalKind.WORK) {
      announcement
          .interval()
          .exercise()
          .map(done::effort)
          .ifPresent(it -> json.put("effort", it.id()));
    }
    tracks.beside(announcement.interval(), json);
  }

  private void superset(Superset superset, ObjectNode json) {
    int index = plan.session().supersets().indexOf(superset);
    json.put("number", superset.number()).put("kind", plan.kinds().get(index).id());
    json.set("exercises", Nodes.texts(superset.exercises().stream().map(Exercise::id).toList()));
    json.set("equipment", Nodes.objects(ItemJson.of(superset, catalogue), ItemJson::write));
    json.set("why", Nodes.texts(new Reasons(plan, catalogue).of(superset)));
  }

  private static void pattern(WorkDone.Pattern pattern, ObjectNode json) {
    json.put("pattern", pattern.id()).put("share", pattern.share());
    json.set("exercises", Nodes.texts(pattern.exercises()));
  }

  private void coverage(TargetCoverage target, ObjectNode json) {
    int place = plan.coverage().indexOf(target);
    json.put("muscle", target.muscle())
        .put("direct", target.direct())
        .put("indirect", target.indirect())
        .put("sets", target.sets())
        .put("minSets", target.minSets())
        .put("credit", done.credit(place))
        .put("working", done.working(place));
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

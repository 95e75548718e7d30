package counterset.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterset.explain.Modifications;
import counterset.json.Json;
import counterset.model.At;
import counterset.model.Catalogue;
import counterset.model.Exercise;
import counterset.model.Interval;
import counterset.model.Plan;
import counterset.model.Track;
import java.util.List;
import java.util.Optional;

/** Writes what the followers of the tracks do. */
final class TrackJson {

  private final Plan plan;
  private final Catalogue catalogue;
  private final Modifications modifications;

  TrackJson(Plan plan, Catalogue catalogue) {
    this.plan = plan;
    this.catalogue = catalogue;
    this.modifications = new Modifications(plan);
  }

  /** The modifications beside a work interval, if there are any. */
  void beside(Interval interval, ObjectNode json) {
    List<Modifications.Shown> shown = modifications.of(interval);
    if (!shown.isEmpty()) {
      json.set(
          "modifications",
          Nodes.objects(
              shown,
              (one, node) ->
                  node.put("limitation", one.track().name()).put("exercise", one.exercise().id())));
    }
  }

  ArrayNode tracks() {
    return Nodes.objects(plan.tracks(), this::track);
  }

  private void track(Track track, ObjectNode json) {
    json.set("limitations", Nodes.texts(track.limitations()));
    ArrayNode instead = json.putArray("modifications");
    track
        .modifications()
        .forEach((at, exercise) -> modification(at, exercise, instead.addObject()));
    json.set(
        "timeline",
        Nodes.objects(
            plan.timeline(),
            (interval, node) -> interval(modifications.asDoneBy(track, interval), node)));
    PlanJson own = new PlanJson(track.plan(), catalogue);
    json.set("coverage", own.coverage());
    json.set("changeovers", own.changeovers());
    json.set("equipmentList", own.equipmentList());
    json.set("cautions", Nodes.texts(track.plan().cautions()));
    json.set("score", ScoreJson.write(track.plan().score()));
  }

  private void modification(At at, Exercise exercise, ObjectNode json) {
    json.set("at", at(at));
    exerciseAt(at).ifPresent(main -> json.put("insteadOf", main.id()));
    json.put("exercise", exercise.id());
  }

  private Optional<Exercise> exerciseAt(At at) {
    return plan.session().supersets().stream()
        .filter(superset -> superset.number() == at.superset())
        .filter(superset -> at.position() < superset.exercises().size())
        .map(superset -> superset.exercises().get(at.position()))
        .findFirst();
  }

  /** A place as an object. */
  static ObjectNode at(At at) {
    return Json.object().put("superset", at.superset()).put("position", at.letter());
  }

  /** An interval without what is said in it. */
  static void interval(Interval interval, ObjectNode json) {
    json.put("start", interval.start())
        .put("end", interval.end())
        .put("kind", interval.kind().id());
    interval.at().ifPresent(at -> json.put("superset", at.superset()).put("position", at.letter()));
    interval.round().ifPresent(round -> json.put("round", round));
    interval.exercise().ifPresent(exercise -> json.put("exercise", exercise.id()));
    interval.side().ifPresent(side -> json.put("side", side.id()));
  }
}
